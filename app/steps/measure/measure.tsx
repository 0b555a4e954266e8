import { Link } from "../../frame/link.tsx";
import { onBox } from "../../frame/route.ts";
import type { OfBox } from "../../frame/screen.ts";
import { useWords } from "../../parts/words.ts";
import { Guided } from "./guided.tsx";
import { Overview } from "./overview.tsx";
import { questionOf } from "./progress.ts";
import { Sheet } from "./sheet.tsx";

/** The step Measure: what is known of the box, one question a screen, or all on one sheet. */
export function Measure({ box, rest: [field] }: OfBox) {
  const words = useWords();
  if (field === undefined) return <Overview box={box} />;
  if (field === "sheet") return <Sheet box={box} />;
  const question = questionOf(box.question, field);
  if (question) return <Guided key={field} box={box} question={question} />;
  return (
    <p>
      {words("measure-not-for-this")} <Link to={onBox(box.id, "measure")}>{words("measure-overview")}</Link>
    </p>
  );
}
