import type { Catalogue } from "../catalogue.ts";
import { cardNames, cardSentences } from "./card.ts";
import { chooseSentences } from "./choose.ts";
import { commandNames, commandSentences } from "./command.ts";
import { cutNames, cutSentences } from "./cut.ts";
import { entrySentences } from "./entries.ts";
import { fitNames, fitSentences } from "./fit.ts";
import { fittingSentences } from "./fitting.ts";
import { fluidNames, fluidSentences } from "./fluid.ts";
import { flushSentences } from "./flush.ts";
import { glandSentences } from "./gland.ts";
import { heatNames, heatSentences } from "./heat.ts";
import { lanternSentences } from "./lantern.ts";
import { leakNames, leakSentences } from "./leak.ts";
import { materialsNames, materialsSentences } from "./materials.ts";
import { ringsNames, ringsSentences } from "./rings.ts";
import { ringsStepNames, ringsStepSentences } from "./rings-step.ts";
import { runInNames, runInSentences } from "./run-in.ts";
import { serverNames, serverSentences } from "./server.ts";
import { stemsNames, stemsSentences } from "./stems.ts";

/** All words beyond measuring: packings, steps, what the models know, terminal, server and card. */
export const rest: Catalogue = {
  language: "en",
  sentences: {
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
    ...cardSentences,
    ...commandSentences,
    ...serverSentences,
    ...ringsStepSentences,
    ...chooseSentences,
    ...fittingSentences,
    ...entrySentences,
  },
  names: {
    ...ringsNames,
    ...cutNames,
    ...stemsNames,
    ...heatNames,
    ...leakNames,
    ...fluidNames,
    ...materialsNames,
    ...fitNames,
    ...runInNames,
    ...cardNames,
    ...commandNames,
    ...serverNames,
    ...ringsStepNames,
  },
};
