export { coverageFactor } from "./coverage.ts";
export { type How, hows, type Instrument, type Instruments } from "./instruments.ts";
export { type Measured, measured, type UncertaintyFacts } from "./measured.ts";
export { probabilityBelow } from "./normal.ts";
export { type PlausibleField, type PlausibleRange, type PlausibleRanges, plausibleFields } from "./plausible.ts";
export { type Bend, effectiveDegrees, type Influence, propagate } from "./propagate.ts";
export { meantInstead, slips, slipsAmong } from "./slips.ts";
