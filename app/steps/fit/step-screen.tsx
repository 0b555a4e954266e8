import type { Step } from "@ringwright/core/fit";
import type { StepText } from "@ringwright/words/plan";
import { useEffect, useRef, useState } from "preact/hooks";
import { Link } from "../../frame/link.tsx";
import { go, onBox } from "../../frame/route.ts";
import { useWorkshop } from "../../frame/workshop.ts";
import type { Box } from "../../kept/box.ts";
import { timeText } from "../../parts/time-text.ts";
import { useWords } from "../../parts/words.ts";
import { readAnswer } from "./answer.ts";
import { AskFor } from "./ask-for.tsx";
import { Cannot } from "./cannot.tsx";
import { Cautions } from "./cautions.tsx";
import type { Fitting, StepsOfBox } from "./fitting.ts";
import { disagrees, numberOf, openStops, standingOf, writtenFor } from "./job.ts";
import { OpenStops } from "./open-stops.tsx";
import { Progress } from "./progress.tsx";
import { RingsSoFar } from "./rings-so-far.tsx";
import { verdictOn } from "./verdict.ts";
import { WrittenDown } from "./written-down.tsx";

/** One step: what to do, what to mind, what to write down, and the way past it if there is one. */
export function StepScreen({
  box,
  steps,
  step,
  text,
  fitting,
}: {
  readonly box: Box;
  readonly steps: StepsOfBox;
  readonly step: Step;
  readonly text: StepText;
  readonly fitting: Fitting;
}) {
  const words = useWords();
  const { drafts } = useWorkshop();
  const heading = useRef<HTMLHeadingElement>(null);
  const { job, prefix, paper } = fitting;
  const drafted = drafts.under(`${prefix}${step.id}/`);
  const written = writtenFor(job, step.id);
  const [again, setAgain] = useState(false);
  const [asked, setAsked] = useState(false);
  const [cannot, setCannot] = useState(false);
  const [fault, setFault] = useState<string>();
  const busy = useRef(false);
  useEffect(() => {
    heading.current?.focus({ preventScroll: true });
    void drafts.put(`${prefix}left`, step.id);
  }, [step.id]);
  const at = steps.steps.findIndex(({ id }) => id === step.id);
  const previous = steps.steps[at - 1];
  const next = steps.steps[at + 1];
  const isLast = next === undefined;
  const stops = isLast ? openStops(steps.steps, job, step.id) : [];
  const answer = readAnswer(step, drafted);
  const ready = answer.kind === "ready" ? answer : undefined;
  const showsWritten = written !== undefined && !again && drafted.size === 0 && !cannot;

  /** Writes once at a time; says so where it can't be kept. */
  const once = async (work: () => Promise<void>) => {
    if (busy.current) return;
    busy.current = true;
    setFault(undefined);
    try {
      await work();
    } catch (error) {
      setFault(error instanceof Error ? error.message : String(error));
    }
    busy.current = false;
  };
  const onward = () => go(next ? onBox(box.id, "fit", next.id) : onBox(box.id, "fit"));
  const keep = () => {
    if (!ready) return setAsked(true);
    if (ready.ringsLeftIn > 0) return setCannot(true);
    if (ready.empty.length > 0 && !asked) return setAsked(true);
    const number = numberOf(ready.found);
    const stop = number !== undefined && verdictOn(step, number).tone === "stop";
    return void once(async () => {
      await fitting.keep(step, ready);
      if (isLast) await fitting.keepStarted();
      setAgain(false);
      setAsked(false);
      if (!stop) onward();
    });
  };
  const emptied = asked && ready && ready.empty.length > 0;
  return (
    <article class="one-step">
      <Progress steps={steps} step={step} job={job} />
      <h2 ref={heading} tabIndex={-1} class="step-says">
        {words.sentence(step.says)}
      </h2>
      {step.items.length === 0 ? null : (
        <ul class="items">
          {step.items.map((item) => (
            <li key={item}>{words.called(item)}</li>
          ))}
        </ul>
      )}
      {paper ? <p class="quiet">{words("fitting-paper-on", { typed: timeText(paper) })}</p> : null}
      <Cautions step={step} fresh={text.cautions} />
      {disagrees(job, step.id) ? <p class="attention">{words("fitting-disagree")}</p> : null}
      {stops.length > 0 && !showsWritten ? (
        <OpenStops box={box} stops={stops} texts={steps.texts} onAnyway={(why) => once(() => startAnyway(why))} />
      ) : cannot ? (
        <Cannot
          step={step}
          prefix={`${prefix}${step.id}/cannot/`}
          ringsLeftIn={ready?.ringsLeftIn ?? 0}
          onBack={() => setCannot(false)}
          onKeep={(reason, made) =>
            once(async () => {
              await fitting.keepNotDone(step, reason, ready?.ringsLeftIn ? ready : undefined);
              if (made) await fitting.keepBridge(step, made);
              setCannot(false);
              setAgain(false);
              if (made) onward();
            })
          }
        />
      ) : showsWritten && written ? (
        <WrittenDown box={box} step={step} written={written} job={job} />
      ) : (
        <AskFor step={step} text={text} prefix={`${prefix}${step.id}/`} job={job} asked={asked} answer={answer} onEnter={keep} />
      )}
      {fault === undefined ? null : (
        <p class="chalk" role="alert">
          {words("app-cannot-keep", { why: fault })}
        </p>
      )}
      {cannot || (stops.length > 0 && !showsWritten) ? null : (
        <button
          type="button"
          class={`primary onward${step.kind === "tick" && !showsWritten ? " tick" : ""}`}
          onClick={showsWritten && standingOf(step, written) !== "off" ? onward : showsWritten ? () => setAgain(true) : keep}
        >
          {showsWritten
            ? words(standingOf(step, written) === "off" ? "fitting-again" : "fitting-next")
            : words(emptied ? "fitting-keep-blank" : step.kind === "tick" || step.kind === "wait" ? "fitting-done" : "fitting-keep")}
        </button>
      )}
      <nav class="bar beside-step" aria-label={words("fitting-all-steps")} hidden={cannot}>
        {previous === undefined ? null : (
          <Link to={onBox(box.id, "fit", previous.id)} class="second">
            {words("fitting-back")}
          </Link>
        )}
        <Link to={onBox(box.id, "fit", "steps")} class="second">
          {words("fitting-list")}
        </Link>
        {showsWritten && standingOf(step, written) !== "off" ? (
          <button type="button" class="second" onClick={() => setAgain(true)}>
            {words("fitting-again")}
          </button>
        ) : null}
        {cannot || showsWritten ? null : (
          <button type="button" class="second" onClick={() => setCannot(true)}>
            {step.bridge ? null : "■ "}
            {words("fitting-cannot")}
          </button>
        )}
      </nav>
      <RingsSoFar steps={steps.steps} step={step} job={job} />
    </article>
  );

  async function startAnyway(why: string): Promise<void> {
    const list = stops.map(({ id }) => steps.texts.get(id)?.number ?? "").join(", ");
    await fitting.note(words("fitting-runs-note", { typed: list, given: why }));
    await fitting.keep(step, { kind: "ready", found: true, blanks: {}, empty: [], ringsLeftIn: 0 });
    await fitting.keepStarted();
    go(onBox(box.id, "fit"));
  }
}
