import { createHash } from "node:crypto";
import { cite } from "@ringwright/core/sources";
import canonicalize from "canonicalize";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { against } from "../testing/against.ts";
import { property } from "../testing/property.ts";
import { canonicalText, hashOf, isId, type Json, timeOfId, uuidv7 } from "./index.ts";

const utf8 = (text: string) => new TextEncoder().encode(text);

describe("canonical JSON as RFC 8785 prints it", () => {
  test("the sample object of 3.2.2 in the bytes of 3.2.4", () => {
    const sample = String.raw`{
      "numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
      "string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/",
      "literals": [null, true, false]
    }`;
    const printed =
      "7b226c69746572616c73223a5b6e756c6c2c747275652c66616c73655d2c226e756d62657273223a5b3333333333333333332e333333333333332c" +
      "31652b33302c342e352c302e3030322c31652d32375d2c22737472696e67223a22e282ac245c75303030665c6e4127425c225c5c5c5c5c222f227d";
    expect(Buffer.from(canonicalText(JSON.parse(sample) as Json)).toString("hex")).toBe(printed);
  });

  test("names sorted by UTF-16 units, as in 3.2.3", () => {
    const sample = String.raw`{ "\u20ac": "Euro Sign", "\r": "Carriage Return", "\ufb33": "Hebrew Letter Dalet With Dagesh", "1": "One",
      "\ud83d\ude00": "Emoji: Grinning Face", "\u0080": "Control", "\u00f6": "Latin Small Letter O With Diaeresis" }`;
    const told = [...canonicalText(JSON.parse(sample) as Json).matchAll(/:"([^"]*)"/gu)].map(([, word]) => word);
    expect(told).toEqual([
      "Carriage Return",
      "One",
      "Control",
      "Latin Small Letter O With Diaeresis",
      "Euro Sign",
      "Emoji: Grinning Face",
      "Hebrew Letter Dalet With Dagesh",
    ]);
  });

  test.each([
    ["0000000000000000", "0"],
    ["8000000000000000", "0"],
    ["0000000000000001", "5e-324"],
    ["8000000000000001", "-5e-324"],
    ["7fefffffffffffff", "1.7976931348623157e+308"],
    ["ffefffffffffffff", "-1.7976931348623157e+308"],
    ["4340000000000000", "9007199254740992"],
    ["c340000000000000", "-9007199254740992"],
    ["4430000000000000", "295147905179352830000"],
    ["44b52d02c7e14af5", "9.999999999999997e+22"],
    ["44b52d02c7e14af6", "1e+23"],
    ["44b52d02c7e14af7", "1.0000000000000001e+23"],
    ["444b1ae4d6e2ef4e", "999999999999999700000"],
    ["444b1ae4d6e2ef4f", "999999999999999900000"],
    ["444b1ae4d6e2ef50", "1e+21"],
    ["3eb0c6f7a0b5ed8c", "9.999999999999997e-7"],
    ["3eb0c6f7a0b5ed8d", "0.000001"],
    ["41b3de4355555553", "333333333.3333332"],
    ["41b3de4355555554", "333333333.33333325"],
    ["41b3de4355555555", "333333333.3333333"],
    ["41b3de4355555556", "333333333.3333334"],
    ["41b3de4355555557", "333333333.33333343"],
    ["becbf647612f3696", "-0.0000033333333333333333"],
    ["43143ff3c1cb0959", "1424953923781206.2"],
  ])("the number with the bits %s is %s, as in appendix B", (bits, printed) => {
    expect(canonicalText(Buffer.from(bits, "hex").readDoubleBE())).toBe(printed);
  });

  test.each(["7fffffffffffffff", "7ff0000000000000"])("the bits %s are no number of JSON, as in appendix B", (bits) => {
    expect(() => canonicalText(Buffer.from(bits, "hex").readDoubleBE())).toThrow();
    expect(() => canonicalText({ a: [Buffer.from(bits, "hex").readDoubleBE()] })).toThrow();
  });

  test("half a surrogate pair is no text of it, as 3.2.2.2 asks, and its escape spelled out is one", () => {
    for (const half of ["\ud83d", "\ude00", "\ude00\ud83d"]) {
      expect(() => canonicalText({ text: half })).toThrow();
      expect(() => canonicalText({ [half]: "text" })).toThrow();
    }
    expect(canonicalText({ text: "\\ud83d" })).toBe(String.raw`{"text":"\\ud83d"}`);
  });

  const names = fc.oneof(fc.string({ unit: "grapheme" }), fc.constantFrom("", "1", "2", "10", "__proto__", "a", "\uffff", "😀"));
  const { json } = fc.letrec<{ json: Json }>((tie) => ({
    json: fc.oneof(
      { maxDepth: 4 },
      fc.constantFrom(null, true, false, 0, -0),
      fc.double({ noNaN: true, noDefaultInfinity: true }),
      fc.string({ unit: "grapheme" }),
      fc.array(tie("json"), { maxLength: 4 }),
      fc.dictionary(names, tie("json"), { maxKeys: 6 }),
    ),
  }));
  property("whatever order the names came in, it is the text that canonicalize writes", [json], (any) => {
    const text = canonicalText(any);
    expect(text).toBe(canonicalize(any));
    expect(canonicalText(JSON.parse(text) as Json)).toBe(text);
  });
});

against(
  {
    topic: "logbook",
    check: "SHA-256 of the message abc, word by word",
    source: cite("fips-180-4", "SHA-256 example for one block"),
    tolerance: "none: the same 256 bits",
  },
  [0xba7816bf, 0x8f01cfea, 0x414140de, 0x5dae2223, 0xb00361a3, 0x96177a9c, 0xb410ff61, 0xf20015ad].map((theirs, word) => ({
    what: `word ${word + 1} of 8`,
    theirs,
    ours: () => Number.parseInt(hashOf(utf8("abc")).slice(word * 8, word * 8 + 8), 16),
    unit: "32-bit word",
    within: { absolute: 0 },
  })),
);

against(
  {
    topic: "logbook",
    check: "Time in a UUID of version 7",
    source: cite("rfc-9562", "appendix A.6"),
    tolerance: "none: the same 48 bits",
  },
  [
    {
      what: "017F22E2-79B0-7CC3-98C4-DC0C0C07398F, 22 February 2022 at 14:22:22.00 GMT-05:00",
      theirs: 0x017f22e279b0,
      ours: () => timeOfId("017F22E2-79B0-7CC3-98C4-DC0C0C07398F".toLowerCase()),
      unit: "ms since 1970",
      within: { absolute: 0 },
    },
  ],
);

test("a UUID of version 7 is put together as in appendix A.6 of RFC 9562", () => {
  // rand_a is CC3; rand_b starts with the two bits 01. What stands under version and variant is dropped: here ones.
  const random = Uint8Array.from(Buffer.from("fcc3d8c4dc0c0c07398f", "hex"));
  expect(uuidv7(Date.UTC(2022, 1, 22, 19, 22, 22), random)).toBe("017f22e2-79b0-7cc3-98c4-dc0c0c07398f");
});

property(
  "ids are UUIDs of version 7 with their time, and sort by it",
  [fc.maxSafeNat(), fc.maxSafeNat(), fc.uint8Array({ minLength: 10, maxLength: 12 })],
  (one, other, random) => {
    const [earlier = 0, later = 0] = [one % 2 ** 48, other % 2 ** 48].sort((a, b) => a - b);
    const id = uuidv7(earlier, random);
    expect(id).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/u);
    expect(isId(id)).toBe(true);
    expect(timeOfId(id)).toBe(earlier);
    if (earlier < later) expect(id < uuidv7(later, random.toReversed())).toBe(true);
  },
);

test("times that no UUID can hold are held at its ends, and too little chance is refused", () => {
  const none = new Uint8Array(10);
  expect(timeOfId(uuidv7(-1, none))).toBe(0);
  expect(timeOfId(uuidv7(2 ** 60, none))).toBe(2 ** 48 - 1);
  expect(timeOfId(uuidv7(1.9, none))).toBe(1);
  expect(() => uuidv7(1, new Uint8Array(9))).toThrow(RangeError);
  for (const odd of ["", 7, null, "017F22E2-79B0-7CC3-98C4-DC0C0C07398F", "017f22e2-79b0-7cc3-98c4-dc0c0c07398f "])
    expect(isId(odd)).toBe(false);
});

property("hashes agree with the second implementation in Node", [fc.uint8Array({ maxLength: 300 })], (bytes) => {
  expect(hashOf(bytes)).toBe(createHash("sha256").update(bytes).digest("hex"));
});

property("canonical text reads back as what it was made of, and is its own canonical text", [fc.jsonValue({ maxDepth: 6 })], (json) => {
  const text = canonicalText(json as Json);
  expect(JSON.parse(text)).toEqual(JSON.parse(JSON.stringify(json)));
  expect(canonicalText(JSON.parse(text) as Json)).toBe(text);
});
