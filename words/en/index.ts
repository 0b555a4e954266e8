import type { Catalogue } from "../catalogue.ts";
import { appNames, appSentences } from "./app.ts";
import { boxNames, boxSentences } from "./box.ts";
import { cardNames, cardSentences } from "./card.ts";
import { cautionsNames, cautionsSentences } from "./cautions.ts";
import { chooseSentences } from "./choose.ts";
import { commandNames, commandSentences } from "./command.ts";
import { cutNames, cutSentences } from "./cut.ts";
import { drawingsNames, drawingsSentences } from "./drawings.ts";
import { entrySentences } from "./entries.ts";
import { fieldNames, fieldSentences } from "./fields.ts";
import { fitNames, fitSentences } from "./fit.ts";
import { fittingSentences } from "./fitting.ts";
import { fluidNames, fluidSentences } from "./fluid.ts";
import { flushNames, flushSentences } from "./flush.ts";
import { glandNames, glandSentences } from "./gland.ts";
import { heatNames, heatSentences } from "./heat.ts";
import { lanternNames, lanternSentences } from "./lantern.ts";
import { leakNames, leakSentences } from "./leak.ts";
import { logbookNames, logbookSentences } from "./logbook.ts";
import { materialsNames, materialsSentences } from "./materials.ts";
import { measureSentences } from "./measure.ts";
import { measuredNames, measuredSentences } from "./measured.ts";
import { planNames, planSentences } from "./plan.ts";
import { quantitySentences } from "./quantity.ts";
import { questionNames, questionSentences } from "./question.ts";
import { ringsNames, ringsSentences } from "./rings.ts";
import { ringsStepNames, ringsStepSentences } from "./rings-step.ts";
import { runInNames, runInSentences } from "./run-in.ts";
import { sectionNames, sectionSentences } from "./section.ts";
import { serverNames, serverSentences } from "./server.ts";
import { settingsSentences } from "./settings.ts";
import { stemsNames, stemsSentences } from "./stems.ts";
import { unitsNames, unitsSentences } from "./units.ts";
import { verdictsNames, verdictsSentences } from "./verdicts.ts";

export const english: Catalogue = {
  language: "en",
  sentences: {
    ...questionSentences,
    ...unitsSentences,
    ...measuredSentences,
    ...boxSentences,
    ...sectionSentences,
    ...ringsSentences,
    ...lanternSentences,
    ...cutSentences,
    ...glandSentences,
    ...stemsSentences,
    ...heatSentences,
    ...leakSentences,
    ...flushSentences,
    ...fluidSentences,
    ...materialsSentences,
    ...fitSentences,
    ...runInSentences,
    ...cautionsSentences,
    ...planSentences,
    ...cardSentences,
    ...commandSentences,
    ...drawingsSentences,
    ...serverSentences,
    ...appSentences,
    ...ringsStepSentences,
    ...verdictsSentences,
    ...measureSentences,
    ...settingsSentences,
    ...quantitySentences,
    ...chooseSentences,
    ...fittingSentences,
    ...entrySentences,
    ...fieldSentences,
    ...logbookSentences,
  },
  names: {
    ...questionNames,
    ...unitsNames,
    ...measuredNames,
    ...boxNames,
    ...sectionNames,
    ...ringsNames,
    ...lanternNames,
    ...cutNames,
    ...glandNames,
    ...stemsNames,
    ...heatNames,
    ...leakNames,
    ...flushNames,
    ...fluidNames,
    ...materialsNames,
    ...fitNames,
    ...runInNames,
    ...cautionsNames,
    ...planNames,
    ...cardNames,
    ...commandNames,
    ...drawingsNames,
    ...serverNames,
    ...appNames,
    ...ringsStepNames,
    ...verdictsNames,
    ...fieldNames,
    ...logbookNames,
  },
};
