import { expect, test } from "vitest";
import { boxes, chance, Device, idOf } from "../../testing/devices.ts";

const [box = null] = boxes;

test("jobs stand in the order they were begun, each with its steps and its start", () => {
  const at = (device: string) => ({ device, serverOffsetMs: null });
  const tablet = new Device(1, chance(3));
  tablet.say("fit-step", { job: idOf(22), step: "step-b", found: true }, box, at("2031-05-02T08:00:00Z"));
  tablet.say("fit-step", { job: idOf(21), step: "step-b", found: true }, box, at("2031-05-01T10:00:00+02:00"));
  tablet.say("fit-step", { job: idOf(21), step: "step-a", found: 3 }, box, {
    ...at("2031-06-01T08:00:00Z"),
    happened: "2031-05-01T07:00:00Z",
  });
  tablet.say("started", { job: idOf(21) }, box, at("2031-05-01T12:00:00Z"));
  const { jobs } = tablet.book.state(box);
  expect(jobs.map(({ id, begun, steps, started }) => [id, begun, [...steps.keys()], started?.at])).toEqual([
    [idOf(21), "2031-05-01T07:00:00Z", ["step-a", "step-b"], "2031-05-01T12:00:00Z"],
    [idOf(22), "2031-05-02T08:00:00Z", ["step-b"], undefined],
  ]);
});

test("a server's clock that is ahead moves an entry in the order of display", () => {
  const tablet = new Device(1, chance(3));
  tablet.say("note", { text: "second" }, box, { device: "2031-05-01T08:00:00Z", serverOffsetMs: 7_200_000 });
  tablet.say("note", { text: "first" }, box, { device: "2031-05-01T09:00:00Z", serverOffsetMs: null });
  expect(tablet.book.state(box).notes.map(({ value }) => value.text)).toEqual(["first", "second"]);
});
