export type { Stock } from "./near-stock.ts";
export { type DiameterBand, type SectionOpinion, type SectionOpinions, type SectionTable, sectionOpinions } from "./opinions.ts";
export { type Section, type SectionBetween, type SectionQuestion, section, sectionBetween } from "./section.ts";
export { slipsOfSection } from "./section-slips.ts";
export { type Fit, fits, type SectionFacts, type StockFacts, type StockSeries, type StockSize, stockSeries } from "./stock.ts";
