import { describe, expect, test } from "vitest";
import { readJson } from "./read-json.ts";

describe("a question as it comes in", () => {
  test("a byte order mark and the line ends of another system are passed over", () => {
    expect(readJson('\ufeff{"shaft":\r\n"50 mm"}\r\n')).toEqual({ ok: true, value: { shaft: "50 mm" } });
  });

  test("nothing at all is said to be empty", () => {
    for (const text of ["", " \n", "\ufeff"]) {
      expect(readJson(text)).toMatchObject({ ok: false, malformed: { kind: "malformed", id: "question-empty" } });
    }
  });

  test("a name that stands twice is refused where it stands, since one of the two would be lost", () => {
    const twice = (text: string) => {
      const read = readJson(text);
      return read.ok ? undefined : read.malformed.input;
    };
    expect(twice('{"shaft":"50 mm","bore":"70 mm","shaft":"60 mm"}')).toBe("shaft");
    expect(twice('{"parts":[{"height":1},{"height":1,"ratio":[{"a":1}],"height":2}]}')).toBe("parts[1].height");
    expect(twice('{"a":{"b":1,"\\u0062":2}}')).toBe("a.b");
    expect(twice('[[0,{"a":{},"b":[{},{"c":[]}],"d":{"e":"\\\\","f":"\\\\\\"","e":1}}]]')).toBe("[0][1].d.e");
    expect(twice('{"a":{"b":"}","c":"b\\",\\"b"},"d":{"b":1},"e":["a","a"]}')).toBeUndefined();
  });

  test("groups without end are refused and overflow nothing", () => {
    for (const [open, close] of [
      ["[", "]"],
      ['{"a":', "}"],
    ] as const) {
      const text = `${open.repeat(200_000)}1${close.repeat(200_000)}`;
      expect(readJson(text)).toMatchObject({ ok: false, malformed: { id: "question-too-deep" } });
    }
  });

  test("what is no JSON is refused with what the reader said", () => {
    expect(readJson('{"shaft": NaN}')).toMatchObject({ ok: false, malformed: { kind: "malformed", id: "not-json" } });
  });
});
