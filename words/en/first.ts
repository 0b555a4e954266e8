import type { Catalogue } from "../catalogue.ts";
import { appNames, appSentences } from "./app.ts";
import { boxNames, boxSentences } from "./box.ts";
import { cautionsNames, cautionsSentences } from "./cautions.ts";
import { drawingsNames, drawingsSentences } from "./drawings.ts";
import { fieldNames, fieldSentences } from "./fields.ts";
import { flushNames } from "./flush.ts";
import { glandNames } from "./gland.ts";
import { lanternNames } from "./lantern.ts";
import { logbookNames, logbookSentences } from "./logbook.ts";
import { measureSentences } from "./measure.ts";
import { measuredNames, measuredSentences } from "./measured.ts";
import { planNames, planSentences } from "./plan.ts";
import { printSentences } from "./print.ts";
import { quantitySentences } from "./quantity.ts";
import { questionNames, questionSentences } from "./question.ts";
import { sectionNames, sectionSentences } from "./section.ts";
import { settingsSentences } from "./settings.ts";
import { unitsNames, unitsSentences } from "./units.ts";
import { verdictsNames, verdictsSentences } from "./verdicts.ts";

const sentences: Record<string, string> = {
  ...questionSentences,
  ...unitsSentences,
  ...measuredSentences,
  ...boxSentences,
  ...sectionSentences,
  ...cautionsSentences,
  ...drawingsSentences,
  ...appSentences,
  ...measureSentences,
  ...settingsSentences,
  ...quantitySentences,
  ...fieldSentences,
  ...logbookSentences,
  ...planSentences,
  ...verdictsSentences,
  ...printSentences,
};

const names: Record<string, string> = {
  ...questionNames,
  ...unitsNames,
  ...measuredNames,
  ...boxNames,
  ...sectionNames,
  ...cautionsNames,
  ...drawingsNames,
  ...appNames,
  ...fieldNames,
  ...logbookNames,
  ...lanternNames,
  ...flushNames,
  ...glandNames,
  ...planNames,
  ...verdictsNames,
};

/**
 * What measuring and drawing a box needs. A device begins with these words
 * alone, and learns the rest once the first box is drawn, or when a screen needs it.
 */
export const english: Catalogue = { language: "en", sentences, names };

/** Adds the rest of the words. */
export function learn(rest: Catalogue): void {
  Object.assign(sentences, rest.sentences);
  Object.assign(names, rest.names);
}
