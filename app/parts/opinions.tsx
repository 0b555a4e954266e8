import type { LimitVerdict, Verdict } from "@ringwright/core/condition";
import type { Source } from "@ringwright/core/sources";
import { useState } from "preact/hooks";
import { useFigure } from "./verdict-figure.ts";
import { useWords } from "./words.ts";

/** Every limit on the ruler as a list, each with its source; the list of sources comes when it is first asked for. */
export function Opinions({ verdict }: { readonly verdict: Verdict }) {
  const words = useWords();
  const figure = useFigure(verdict);
  const [sources, setSources] = useState<Readonly<Record<string, Source>>>();
  const counted = verdict.limits.filter(({ beside }) => !beside);
  const { houseLimit } = verdict;
  const cited = ({ source, at, seen = sources?.[source]?.seen }: LimitVerdict) =>
    [sources?.[source]?.title ?? words(`opinion-by-${source}`), at, seen && words(`seen-${seen}`)].filter(Boolean).join(", ");
  return (
    <details
      class="opinions"
      onToggle={({ currentTarget }) => {
        if (currentTarget.open && sources === undefined) void import("@ringwright/core/sources").then((all) => setSources(all.sources));
      }}
    >
      <summary>{words("verdict-opinions", { passes: verdict.passes, count: counted.length })}</summary>
      <ul>
        {verdict.limits.map((limit) => (
          <li key={limit.id}>
            <strong class="worked">{figure(limit.value, true)}</strong> {words(`verdict-outcome-${limit.outcome}`)}
            {limit.beside ? `; ${words("verdict-opinion-beside")}` : ""}
            <span class="quiet">{cited(limit)}</span>
          </li>
        ))}
        {houseLimit === undefined ? null : (
          <li>
            <strong class="worked">{figure(houseLimit.value, true)}</strong> {words(`verdict-outcome-${houseLimit.outcome}`)}
            <span class="quiet">
              {words("verdict-house")}, {houseLimit.setBy}
              {houseLimit.why === undefined ? "" : `; ${words("verdict-house-why", { why: houseLimit.why })}`}
            </span>
          </li>
        )}
      </ul>
    </details>
  );
}
