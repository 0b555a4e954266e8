import { motions, releases, uses, zones } from "@ringwright/core/box";
import { type Case, oldPackings, phases, ringForms, seatings, services, yesNoUnknown } from "@ringwright/core/cautions";
import { quantity } from "@ringwright/core/units";
import { readAllFacts } from "@ringwright/data";
import fc from "fast-check";

const { cautions: facts } = readAllFacts();

/** Any case that a person could describe, with any part of it left out. */
export const anyCase = fc.record(
  {
    motion: fc.constantFrom(...motions),
    release: fc.constantFrom(...releases),
    zone: fc.constantFrom(...zones),
    phase: fc.constantFrom(...phases),
    fluids: fc.subarray(
      facts.fluids.map((fluid) => fluid.id),
      { maxLength: 2 },
    ),
    temperature: fc.double({ min: -190, max: 500, noNaN: true }).map((value) => quantity("temperature", value, "degC")),
    toxic: fc.constantFrom(...yesNoUnknown),
    flammable: fc.constantFrom(...yesNoUnknown),
    flush: fc.constantFrom(...yesNoUnknown),
    quench: fc.constantFrom(...yesNoUnknown),
    grease: fc.constantFrom(...yesNoUnknown),
    heating: fc.constantFrom(...yesNoUnknown),
    vertical: fc.constantFrom(...yesNoUnknown),
    family: fc.constantFrom(...facts.families.map((family) => family.id)),
    ringForm: fc.constantFrom(...ringForms),
    seating: fc.constantFrom(...seatings),
    sleeve: fc.constantFrom("chromium-13", "austenitic-stainless"),
    oldPacking: fc.constantFrom(...oldPackings),
    use: fc.constantFrom(...uses),
    service: fc.constantFrom(...services),
  },
  { requiredKeys: ["motion"] },
) as fc.Arbitrary<Case>;
