export * from "./case.ts";
export {
  type Caution,
  type CautionFact,
  type CautionFacts,
  type CautionsFound,
  cautions,
  type Guards,
  type OpenCase,
  openCase,
  refuseCase,
  type Severity,
  severities,
} from "./cautions.ts";
export { holds, type Sides, type When } from "./condition.ts";
