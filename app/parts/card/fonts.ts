import mono400 from "@fontsource/atkinson-hyperlegible-mono/files/atkinson-hyperlegible-mono-latin-400-normal.woff?url";
import mono700 from "@fontsource/atkinson-hyperlegible-mono/files/atkinson-hyperlegible-mono-latin-700-normal.woff?url";
import monoExt400 from "@fontsource/atkinson-hyperlegible-mono/files/atkinson-hyperlegible-mono-latin-ext-400-normal.woff?url";
import monoExt700 from "@fontsource/atkinson-hyperlegible-mono/files/atkinson-hyperlegible-mono-latin-ext-700-normal.woff?url";
import next400 from "@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-400-normal.woff?url";
import next700 from "@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-700-normal.woff?url";
import nextExt400 from "@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-ext-400-normal.woff?url";
import nextExt700 from "@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-ext-700-normal.woff?url";
import { type CardFonts, fontFiles } from "@ringwright/card";
import fallback from "dejavu-fonts-ttf/ttf/DejaVuSans.ttf?url";
import fallbackBold from "dejavu-fonts-ttf/ttf/DejaVuSans-Bold.ttf?url";

/** Where this page keeps each font file that the card asks for, by the end of its name. */
const addresses: Readonly<Record<string, string>> = {
  "next-latin-400-normal.woff": next400,
  "next-latin-700-normal.woff": next700,
  "next-latin-ext-400-normal.woff": nextExt400,
  "next-latin-ext-700-normal.woff": nextExt700,
  "mono-latin-400-normal.woff": mono400,
  "mono-latin-700-normal.woff": mono700,
  "mono-latin-ext-400-normal.woff": monoExt400,
  "mono-latin-ext-700-normal.woff": monoExt700,
  "DejaVuSans.ttf": fallback,
  "DejaVuSans-Bold.ttf": fallbackBold,
};

/** Where this page keeps a font file; an empty text for one that it has not. */
export function addressOfFont(file: string): string {
  return Object.entries(addresses).find(([end]) => file.endsWith(end))?.[1] ?? "";
}

/** The faces of the card, from this page's own files, each file once. */
export async function cardFonts(): Promise<CardFonts> {
  const bytes = new Map<string, Promise<Uint8Array>>();
  const read = (file: string) => {
    const address = addressOfFont(file);
    const known = bytes.get(address) ?? fetchBytes(address);
    bytes.set(address, known);
    return known;
  };
  const face = (name: keyof CardFonts) => Promise.all(fontFiles[name].map(read));
  const [words, wordsBold, numbers, numbersBold] = await Promise.all([
    face("words"),
    face("wordsBold"),
    face("numbers"),
    face("numbersBold"),
  ]);
  return { words, wordsBold, numbers, numbersBold };
}

async function fetchBytes(address: string): Promise<Uint8Array> {
  const reply = await fetch(address);
  if (!reply.ok) throw new Error(`${address} answered ${reply.status}`);
  return new Uint8Array(await reply.arrayBuffer());
}
