import { type Candidate, clearing, type Reason, type Rejected } from "@ringwright/core/materials";
import { Link } from "../../frame/link.tsx";
import { onBox } from "../../frame/route.ts";
import type { Box } from "../../kept/box.ts";
import { useWords } from "../../parts/words.ts";
import { askedAt } from "./rests-on.ts";

/** Why a packing stands where it does: the reason that binds, each warning, and under each what would clear it. */
export function Reasons({
  box,
  of: { binding, because },
  short = false,
}: {
  readonly box: Box;
  readonly of: Candidate | Rejected;
  readonly short?: boolean;
}) {
  const words = useWords();
  const against = because.filter(({ kind }) => kind === "stop" || kind === "warn" || kind === "ask");
  const binds = because.find(({ says }) => says.id === binding.says.id && words.sentence(says) === words.sentence(binding.says));
  const rest = [...new Map(against.filter((one) => one !== binds).map((one) => [words.sentence(one.says), one])).values()];
  const memory = binding.seen ? "" : ` (${words("plan-memory")})`;
  return (
    <div class="reasons">
      <p class={binds?.kind === "stop" ? "attention" : undefined}>
        {words.sentence(binding.says)}
        {memory}
      </p>
      {binds ? <Clears box={box} reason={binds} /> : null}
      {rest.map((reason) => (
        <div key={words.sentence(reason.says)}>
          <p class={reason.kind === "stop" ? "attention" : undefined}>· {words.sentence(reason.says)}</p>
          <Clears box={box} reason={reason} />
        </div>
      ))}
      {short ? null : (
        <>
          {because
            .filter(({ kind }) => kind === "note")
            .map(({ says }) => (
              <p key={says.id} class="quiet">
                {words.sentence(says)}
              </p>
            ))}
          {because.some((one) => one.kind === "holds" && one !== binds) ? (
            <details>
              <summary>{words("choose-holds")}</summary>
              {because
                .filter((one) => one.kind === "holds" && one !== binds)
                .map(({ says }) => (
                  <p key={words.sentence(says)}>{words.sentence(says)}</p>
                ))}
            </details>
          ) : null}
        </>
      )}
    </div>
  );
}

/** What would clear a reason; where it only has to be said, the way to saying it. */
function Clears({ box, reason }: { readonly box: Box; readonly reason: Reason }) {
  const words = useWords();
  if (reason.kind === "holds" || reason.kind === "note") return null;
  const clear = clearing(reason);
  return (
    <p class="clears quiet">
      {clear === undefined ? (
        words("choose-only-another")
      ) : (
        <>
          {words("choose-clears")}{" "}
          {clear.unsaid === undefined ? (
            words.sentence(clear.says)
          ) : (
            <Link to={onBox(box.id, "measure", askedAt[clear.unsaid])}>{words.sentence(clear.says)}</Link>
          )}
        </>
      )}
    </p>
  );
}
