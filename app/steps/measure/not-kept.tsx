import { Link } from "../../frame/link.tsx";
import { onBox } from "../../frame/route.ts";
import type { Box } from "../../kept/box.ts";
import { useWords } from "../../parts/words.ts";
import { faults } from "./answering.ts";
import { draftKey } from "./draft.ts";

/** What this device could not keep: it is still a draft, and one tap away. */
export function NotKept({ box }: { readonly box: Box }) {
  const words = useWords();
  const prefix = draftKey(box.id, "");
  const found = [...faults.value].filter(([key]) => key.startsWith(prefix));
  if (found.length === 0) return null;
  return (
    <div class="outside" role="alert">
      {found.map(([key, why]) => (
        <p key={key} class="chalk">
          {words("app-cannot-keep", { why })} <Link to={onBox(box.id, "measure", key.slice(prefix.length))}>{words("app-retry")}</Link>
        </p>
      ))}
    </div>
  );
}
