import type { Drawing as Drawn } from "@ringwright/drawings";
import { useEffect, useLayoutEffect, useMemo, useRef } from "preact/hooks";
import { loadRest, loadRestWhenIdle } from "../../facts/facts.ts";
import { Drawing } from "../../parts/drawing.tsx";
import { useWords } from "../../parts/words.ts";
import type { Live } from "./live.ts";
import { markedPart, ownDrawing, pointing, typicalDrawing, withHidden } from "./picture.ts";
import type { Question } from "./question.ts";

/**
 * The box to scale, drawn again as numbers arrive. While they make no box the
 * last good drawing stays, and words say so; before there is one a typical box
 * stands in.
 */
export function LiveDrawing({
  live,
  title,
  asked,
  hidden = false,
  widest,
}: {
  readonly live: Live;
  readonly title: string;
  readonly asked?: Question | undefined;
  /** It is read again with what was read before hidden: nothing may show it. */
  readonly hidden?: boolean;
  readonly widest?: number;
}) {
  const words = useWords();
  const good = useRef<Drawn | undefined>(undefined);
  const fresh = useMemo(() => ownDrawing(live, title), [live, title]);
  if (fresh) good.current = fresh;
  const own = good.current;
  const drawing = useMemo(() => {
    const drawn = own === undefined ? typicalDrawing(live, asked) : asked ? pointing(own, asked) : own;
    return hidden && asked ? withHidden(drawn, asked) : drawn;
  }, [own, asked, hidden, own === undefined ? live : undefined]);
  useLayoutEffect(() => {
    performance.clearMeasures("live-drawing");
    performance.measure("live-drawing", { start: live.since, end: performance.now() });
  }, [live]);
  const why = own === undefined || fresh === undefined ? refusalOf(live) : undefined;
  const unsaid = why !== undefined && words.sentence(why) === why.id;
  useEffect(() => {
    // A refusal without its sentence needs the rest of the words; once the box stands, what comes next does.
    if (unsaid) void loadRest();
    else if (own !== undefined) loadRestWhenIdle();
  }, [unsaid, own === undefined]);
  const mark = asked && markedPart(drawing, asked);
  return (
    <figure class="live">
      {/* What is hidden leaves the page at once, even where the drawing is out of view. */}
      <Drawing key={String(hidden)} of={drawing} idPrefix="live" mark={mark} {...(widest === undefined ? {} : { widest })} />
      <figcaption class="quiet">
        {own === undefined ? <strong>{words("measure-typical")}</strong> : fresh === undefined ? words("measure-last-good") : null}
        {mark === undefined ? null : <span> {words("measure-asked-here")}</span>}
        {own === undefined && asked === undefined ? <span> {words("measure-drawn-when")}</span> : null}
      </figcaption>
      {why === undefined ? null : (
        <p class="chalk" role="status">
          {words.sentence(why)}
        </p>
      )}
    </figure>
  );
}

const sizes: ReadonlySet<string> = new Set(["shaft", "bore", "depth", "section", "ring-set"]);

/** Why what is known makes no box. */
function refusalOf({ planned }: Live) {
  if (planned.kind !== "planned") return undefined;
  if (!planned.answer.ok) return planned.answer.refusal.says;
  return planned.answer.value.refused.find(({ part }) => sizes.has(part))?.refusal.says;
}
