import type { CardFonts, Issued, Paper } from "@ringwright/card";
import type { Plan } from "@ringwright/core/plan";
import type { UnitSystem } from "@ringwright/core/units";
import type { Found } from "@ringwright/core/workings";
import { version } from "../version.ts";
import { readFonts } from "./fonts.ts";

let fonts: CardFonts | undefined;

/** The card of a plan as a PDF, issued now. Card, PDF library and fonts are loaded only here. */
export async function printCard(
  plan: Found<Plan>,
  { system, paper, now }: { readonly system: UnitSystem; readonly paper: Paper; readonly now: Date },
): Promise<Uint8Array> {
  const [{ drawCard, fontFiles }, { default: Document }] = await Promise.all([import("@ringwright/card"), import("pdfkit")]);
  fonts ??= readFonts(fontFiles);
  return drawCard(plan, { Document, fonts, system, paper, issued: issuedAt(now) });
}

/** The moment as the clock on this machine shows it, with its offset, and the version of this program. */
function issuedAt(now: Date): Issued {
  const two = (value: number) => String(value).padStart(2, "0");
  const offset = -now.getTimezoneOffset();
  const [sign, away] = [offset < 0 ? "-" : "+", Math.abs(offset)];
  const date = `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
  const time = `${two(now.getHours())}:${two(now.getMinutes())}:${two(now.getSeconds())}`;
  return { when: `${date}T${time}${sign}${two(Math.floor(away / 60))}:${two(away % 60)}`, version };
}
