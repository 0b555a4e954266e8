import type { Catalogue } from "../catalogue.ts";
import { appNames, appSentences } from "./app.ts";
import { boxNames, boxSentences } from "./box.ts";
import { cautionsNames, cautionsSentences } from "./cautions.ts";
import { drawingsNames, drawingsSentences } from "./drawings.ts";
import { fieldNames, fieldSentences } from "./fields.ts";
import { logbookNames, logbookSentences } from "./logbook.ts";
import { measureSentences } from "./measure.ts";
import { measuredNames, measuredSentences } from "./measured.ts";
import { quantitySentences } from "./quantity.ts";
import { questionNames, questionSentences } from "./question.ts";
import { sectionNames, sectionSentences } from "./section.ts";
import { settingsSentences } from "./settings.ts";
import { unitsNames, unitsSentences } from "./units.ts";

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
};

/**
 * What measuring and drawing a box needs. A device begins with these words
 * alone, and learns the rest once the first page stands.
 */
export const english: Catalogue = { language: "en", sentences, names };

/** Adds the rest of the words. */
export function learn(rest: Catalogue): void {
  Object.assign(sentences, rest.sentences);
  Object.assign(names, rest.names);
}
