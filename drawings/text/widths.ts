/**
 * How wide characters are, in hundredths of the font size, so that a page can
 * be laid out with no screen to measure on. Each width is the larger of
 * Atkinson Hyperlegible Next and DejaVu Sans (read from the font files,
 * rounded up), so that what fits here fits with either.
 */
type Widths = Readonly<Record<number, string>>;

const plain: Widths = {
  20: "\u2009\u202f",
  24: "′",
  28: "'ijlìíîï",
  32: " ,.\u00a0·‘’",
  34: ":;|¦",
  36: "f",
  38: "-″",
  40: "()/I[\\]tÌÍÎÏ",
  42: "!r¡²³¹",
  46: '"',
  48: "ªº",
  50: "*_`¨¯°´¸",
  52: "J–“”",
  54: "?sz§¿",
  56: "Lcç",
  58: "Fk",
  60: "vxyýÿ",
  62: "PTYaeo«»ÝÞàáâãäåèéêëðòóôõöø⌀",
  64: "$123456789ESbdghnpqu{}¢£¤¥µ¶ÈÉÊËßñùúûüþ√",
  66: "0K",
  70: "ABCRVXZÀÁÂÃÄÅÇ",
  74: "UÙÚÛÜ",
  76: "HNÑ",
  78: "&DGÐ",
  80: "OQÒÓÔÕÖØ",
  82: "w",
  84: "#+<=>^~¬±×÷−≤≥≈←→↑↓",
  88: "M",
  96: "%",
  98: "m¼½¾Æ",
  100: "@W©®æ—…",
};

const bold: Widths = {
  20: "\u2009\u202f",
  28: "′",
  32: "'",
  36: " ijl\u00a0ìíîï",
  38: ",.|¦·‘’",
  40: ":;",
  42: "-f",
  44: "/I\\²³¹ÌÍÎÏ",
  46: "!()[]¡″",
  48: "t",
  50: "_`r¨¯°´¸",
  52: "–",
  54: '"*',
  56: "§",
  58: "Jªº",
  60: "?csz¿ç",
  62: "⌀",
  64: "L¤¶",
  66: "vxy«»ýÿ“”",
  68: "aekàáâãäåèéêë√",
  70: "$0123456789EFTo¢£¥ÈÉÊËðòóôõöø",
  72: "bdghnpqu{}ßñùúûüþ",
  74: "CPSYZµÇÝÞ",
  78: "ABKRVXÀÁÂÃÄÅ",
  82: "UÙÚÛÜ",
  84: "#+<=>DGHN^~¬±ÐÑ×÷−≤≥≈←→↑↓",
  86: "OQÒÓÔÕÖØ",
  88: "&",
  94: "w",
  100: "@M©®—…",
  102: "%",
  104: "¼½¾",
  106: "mæ",
  110: "Æ",
  112: "W",
};

/** Wider than any letter of the scripts that the fonts and their fallback draw. */
const unknown = 1.2;

const tabled = (widths: Widths): ReadonlyMap<string, number> =>
  new Map(Object.entries(widths).flatMap(([width, characters]) => [...characters].map((one) => [one, Number(width) / 100] as const)));

const tables = { plain: tabled(plain), bold: tabled(bold) } as const;

/** Every character of the mono face; the few that it lacks come from a fallback that may be wider. */
const mono = 0.632;
const outsideMono = new Set("←→↑↓≤≥≈√′″⌀µ");

/** Width of a text in font sizes. */
export function widthOf(text: string, face: "words" | "numbers", heavy: boolean): number {
  const table = heavy ? tables.bold : tables.plain;
  let width = 0;
  for (const character of text) {
    const known = table.get(character);
    width += known === undefined ? unknown : face === "words" ? known : outsideMono.has(character) ? Math.max(mono, known) : mono;
  }
  return width;
}
