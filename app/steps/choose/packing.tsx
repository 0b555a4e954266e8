import { type Candidate, type Materials, material, type Rejected } from "@ringwright/core/materials";
import { answerOf, type Plan } from "@ringwright/core/plan";
import type { Step } from "@ringwright/core/workings";
import { useEffect, useMemo, useRef } from "preact/hooks";
import { facts } from "../../facts/facts.ts";
import { Link } from "../../frame/link.tsx";
import { go, onBox } from "../../frame/route.ts";
import type { Box } from "../../kept/box.ts";
import { capital } from "../../parts/capital.ts";
import { useWords } from "../../parts/words.ts";
import { WorkingsButton } from "../../parts/workings.tsx";
import { Facts } from "./facts.tsx";
import { PackWithThis } from "./pack-with-this.tsx";
import { Reasons } from "./reasons.tsx";

/** One packing: how it stands for this box, everything that is known of it, beside another if wanted. */
export function Packing({
  box,
  plan,
  style,
  beside,
}: {
  readonly box: Box;
  readonly plan: Plan | undefined;
  readonly style: string;
  readonly beside: string | undefined;
}) {
  const words = useWords();
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus({ preventScroll: true }), []);
  const all = facts.value.all.materials;
  const found = answerOf(plan?.chosen.materials);
  const steps: readonly Step[] = plan?.chosen.materials.ok ? plan.chosen.materials.workings : [];
  const others = all.styles.map(({ id }) => id).filter((id) => id !== style);
  const other = others.find((id) => id === beside);
  const shown = other === undefined ? [style] : [style, other];
  const rejected = found?.rejected.find((one) => one.style === style);
  return (
    <div class="choose">
      <Link to={onBox(box.id, "choose")} class="second">
        {words("choose-all")}
      </Link>
      <h2 ref={heading} tabIndex={-1} class="packing-name">
        {capital(words.called(style))}
      </h2>
      <PackWithThis box={box} style={style} rejected={rejected} taken={plan?.survey.set?.style === style} />
      <p class="field beside">
        <label for="beside">{words("choose-beside")}</label>
        <select
          id="beside"
          value={other ?? ""}
          onChange={({ currentTarget }) =>
            go(onBox(box.id, "choose", style, ...(currentTarget.value === "" ? [] : [currentTarget.value])), true)
          }
        >
          <option value="">{words("choose-beside-none")}</option>
          {others.map((id) => (
            <option key={id} value={id}>
              {words.called(id)}
            </option>
          ))}
        </select>
      </p>
      <div class={shown.length > 1 ? "side-by-side" : undefined}>
        {shown.map((id) => (
          <section key={id}>
            {shown.length > 1 ? <h3>{capital(words.called(id))}</h3> : null}
            <Standing box={box} of={standingOf(found, id)} />
            <WorkingsButton
              part={words.called(id)}
              steps={steps.filter(
                ([{ id: rule }]) =>
                  rule.startsWith(`${id}-`) && others.every((one) => !(one.startsWith(`${id}-`) && rule.startsWith(`${one}-`))),
              )}
            />
            <FactsOf id={id} />
          </section>
        ))}
      </div>
    </div>
  );
}

function standingOf(found: Materials | undefined, style: string): Candidate | Rejected | undefined {
  return found?.ranked.find((one) => one.style === style) ?? found?.rejected.find((one) => one.style === style);
}

function Standing({ box, of: one }: { readonly box: Box; readonly of: Candidate | Rejected | undefined }) {
  const words = useWords();
  if (!one) return null;
  return (
    <section class="told">
      <h3>{words("choose-why-here")}</h3>
      {"standing" in one ? <p>{words(`plan-packing-${one.standing}`)}</p> : null}
      <Reasons box={box} of={one} />
    </section>
  );
}

function FactsOf({ id }: { readonly id: string }) {
  const all = facts.value.all.materials;
  const known = useMemo(() => material({ id }, all), [id, all]);
  return known.ok ? <Facts of={known.value} /> : null;
}
