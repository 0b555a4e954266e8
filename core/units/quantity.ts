/**
 * Quantities inside the program are plain numbers in SI units, branded with
 * what they measure, so that a gauge pressure cannot be passed for an absolute
 * one or a stress for a pressure. Conversion happens only at the edges, here.
 */
declare const measures: unique symbol;

/** A number in its SI unit that measures one kind of thing. */
export type Quantity<Name extends string> = number & { readonly [measures]: Name };

/** Each kind of quantity with the type that carries it. */
export interface Kinds {
  /** m */ length: Quantity<"length">;
  /** m2 */ area: Quantity<"area">;
  /** m3 */ volume: Quantity<"volume">;
  /** rad */ angle: Quantity<"angle">;
  /** s */ time: Quantity<"time">;
  /** m/s */ speed: Quantity<"speed">;
  /** rad/s */ rotation: Quantity<"rotation">;
  /** kg */ mass: Quantity<"mass">;
  /** kg/m3 */ density: Quantity<"density">;
  /** N */ force: Quantity<"force">;
  /** N*m */ torque: Quantity<"torque">;
  /** Pa above the local atmosphere */ pressure: Quantity<"pressure">;
  /** Pa above vacuum */ "absolute-pressure": Quantity<"absolute-pressure">;
  /** Pa between two places */ "pressure-difference": Quantity<"pressure-difference">;
  /** Pa inside a solid */ stress: Quantity<"stress">;
  /** Pa*s */ viscosity: Quantity<"viscosity">;
  /** m2/s */ "kinematic-viscosity": Quantity<"kinematic-viscosity">;
  /** m3/s */ flow: Quantity<"flow">;
  /** W */ power: Quantity<"power">;
  /** K above absolute zero */ temperature: Quantity<"temperature">;
  /** K between two temperatures */ "temperature-difference": Quantity<"temperature-difference">;
  /** J/(kg*K) */ "heat-capacity": Quantity<"heat-capacity">;
  /** W/K */ conductance: Quantity<"conductance">;
  /** N/m */ "surface-tension": Quantity<"surface-tension">;
  /** Pa*m/s: pressure on a surface times its speed */ "pressure-speed": Quantity<"pressure-speed">;
}

export type Kind = keyof Kinds;

export type Length = Kinds["length"];
export type Area = Kinds["area"];
export type Volume = Kinds["volume"];
export type Angle = Kinds["angle"];
export type Time = Kinds["time"];
export type Speed = Kinds["speed"];
export type Rotation = Kinds["rotation"];
export type Mass = Kinds["mass"];
export type Density = Kinds["density"];
export type Force = Kinds["force"];
export type Torque = Kinds["torque"];
/** Pressure above the local atmosphere. */
export type GaugePressure = Kinds["pressure"];
export type AbsolutePressure = Kinds["absolute-pressure"];
export type PressureDifference = Kinds["pressure-difference"];
export type Stress = Kinds["stress"];
export type Viscosity = Kinds["viscosity"];
export type KinematicViscosity = Kinds["kinematic-viscosity"];
export type VolumeFlow = Kinds["flow"];
export type Power = Kinds["power"];
export type Temperature = Kinds["temperature"];
export type TemperatureDifference = Kinds["temperature-difference"];
export type HeatCapacity = Kinds["heat-capacity"];
export type Conductance = Kinds["conductance"];
export type SurfaceTension = Kinds["surface-tension"];
export type PressureSpeed = Kinds["pressure-speed"];

/** The SI unit in which each kind is carried and replied. */
export const siUnits = {
  length: "m",
  area: "m2",
  volume: "m3",
  angle: "rad",
  time: "s",
  speed: "m/s",
  rotation: "rad/s",
  mass: "kg",
  density: "kg/m3",
  force: "N",
  torque: "N*m",
  pressure: "Pa",
  "absolute-pressure": "Pa",
  "pressure-difference": "Pa",
  stress: "Pa",
  viscosity: "Pa*s",
  "kinematic-viscosity": "m2/s",
  flow: "m3/s",
  power: "W",
  temperature: "K",
  "temperature-difference": "K",
  "heat-capacity": "J/(kg*K)",
  conductance: "W/K",
  "surface-tension": "N/m",
  "pressure-speed": "Pa*m/s",
} as const satisfies Record<Kind, string>;

/** Every kind, in the order of the table above. */
export const kinds = Object.keys(siUnits) as readonly Kind[];
