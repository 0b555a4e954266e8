import { glandMoved, type Plan } from "@ringwright/core/plan";
import type { Length } from "@ringwright/core/units";
import { boxMoved, boxOfPlan, partsWhenMoved, pushOfPlan } from "@ringwright/drawings";
import type { ComponentChildren } from "preact";
import { useState } from "preact/hooks";
import { useWords } from "../../parts/words.ts";
import { reaching } from "./reaches.ts";

const shown = (value: number) => ({ value, kind: "length", decimals: 1 });

/** A table for those who would rather read a drawing than look at it; worked out when it is opened. */
function Opened({ children }: { readonly children: () => ComponentChildren }) {
  const words = useWords();
  const [open, setOpen] = useState(false);
  return (
    <details onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
      <summary>{words("rings-step-table")}</summary>
      {open ? children() : null}
    </details>
  );
}

/** Where each part of the set lies at this place of the gland. */
export function SetTable({ plan, gland }: { readonly plan: Plan; readonly gland: Length }) {
  const words = useWords();
  return (
    <Opened>
      {() => {
        const drawn = boxOfPlan(plan, "");
        const moved = glandMoved(plan, gland);
        if (!drawn || !moved) return null;
        return (
          <table>
            <caption>{words("rings-step-table-box")}</caption>
            <thead>
              <tr>
                <th scope="col">{words("rings-step-part")}</th>
                <th scope="col">{words("rings-step-from-throat")}</th>
                <th scope="col">{words("rings-step-to")}</th>
              </tr>
            </thead>
            <tbody>
              {partsWhenMoved(boxMoved(drawn, moved)).map(({ kind, number, from, to }) => (
                <tr key={from}>
                  <th scope="row">{words(`drawing-part-${kind}`, number === undefined ? {} : { number })}</th>
                  <td>{words.sentence({ id: "rings-step-length", with: { value: shown(from) } })}</td>
                  <td>{words.sentence({ id: "rings-step-length", with: { value: shown(to) } })}</td>
                </tr>
              ))}
            </tbody>
          </table>
        );
      }}
    </Opened>
  );
}

/** How much of a further push reaches each ring. */
export function PushTable({ plan }: { readonly plan: Plan }) {
  const words = useWords();
  return (
    <Opened>
      {() => {
        const push = pushOfPlan(plan);
        if (!push) return null;
        return (
          <table>
            <caption>{words("rings-step-push")}</caption>
            <thead>
              <tr>
                <th scope="col">{words("rings-step-ring")}</th>
                {push.curves.map(({ motion }) => (
                  <th key={motion} scope="col">
                    {words(`drawing-${motion}`)}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {push.parts.map(({ ring, from, to }) =>
                ring === undefined ? null : (
                  <tr key={ring}>
                    <th scope="row">{ring}</th>
                    {push.curves.map((curve) => (
                      <td key={curve.motion}>
                        {words("rings-step-percent", { percent: Math.round(100 * (reaching(curve, from, to) ?? 0)) })}
                      </td>
                    ))}
                  </tr>
                ),
              )}
            </tbody>
          </table>
        );
      }}
    </Opened>
  );
}

/** At which hour the joint of each ring goes. */
export function JointTable({ joints }: { readonly joints: readonly number[] }) {
  const words = useWords();
  return (
    <Opened>
      {() => (
        <table>
          <caption>{words("rings-step-joints")}</caption>
          <thead>
            <tr>
              <th scope="col">{words("rings-step-ring")}</th>
              <th scope="col">{words("rings-step-joint")}</th>
            </tr>
          </thead>
          <tbody>
            {joints.map((hour, i) => (
              <tr key={i}>
                <th scope="row">{i + 1}</th>
                <td>{words("rings-step-clock", { hour })}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </Opened>
  );
}
