import { answerOf } from "@ringwright/core/plan";
import { facts, loadRest } from "../../facts/facts.ts";
import type { OfBox } from "../../frame/screen.ts";
import { planOf } from "../../kept/box.ts";
import { useWords } from "../../parts/words.ts";
import { Packing } from "./packing.tsx";
import { RestsOnList } from "./rests-on-list.tsx";
import { Shortlist } from "./shortlist.tsx";

/** Choosing the packing: what the choice rests on, what passes in rank with the reason that binds, what does not and why. */
export function Choose({ box, rest: [style, beside] }: OfBox) {
  const words = useWords();
  if (!facts.value.whole) {
    void loadRest();
    return <p role="status">{words("choose-reading")}</p>;
  }
  const plan = planOf(box);
  const found = answerOf(plan?.chosen.materials);
  if (style !== undefined && facts.value.all.materials.styles.some(({ id }) => id === style))
    return <Packing key={style} box={box} plan={plan} style={style} beside={beside} />;
  return (
    <div class="choose">
      <RestsOnList box={box} plan={plan} />
      {plan && found ? <Shortlist box={box} plan={plan} found={found} /> : null}
      {plan && !plan.chosen.materials.ok && "refusal" in plan.chosen.materials ? (
        <p class="chalk">{words.sentence(plan.chosen.materials.refusal.says)}</p>
      ) : null}
    </div>
  );
}
