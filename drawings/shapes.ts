import type { Family } from "@ringwright/core/materials";
import type { Length } from "@ringwright/core/units";
import type { Says } from "@ringwright/core/workings";

/**
 * A drawing is plain data: shapes in millimetres of the real thing, y up, and
 * the dimensions and labels that belong to them. It knows no paper, scale,
 * unit system or language; `toSvg` and whatever prints it choose those.
 */
export interface Drawing {
  /** Kebab-case; begins every id in an exported file. */
  readonly name: string;
  readonly title: Text;
  readonly subtitle?: Text;
  /** Sentences that tell someone who cannot see the drawing what it shows, and which parts of it are convention. */
  readonly description: readonly Says[];
  /** Parts that can be pointed at, in drawing order, with what each is called. */
  readonly parts: readonly Part[];
  readonly shapes: readonly Shape[];
  readonly dimensions: readonly Dimension[];
  readonly balloons: readonly Balloon[];
  readonly labels: readonly Label[];
  /** Notes under the drawing. */
  readonly notes: readonly Note[];
  /** A band that is left out because nothing happens there; everything else stays to scale. */
  readonly leftOut?: LeftOut;
  /** Whether one millimetre means a millimetre: a scale, a scale bar and a key to measured and worked-out figures are shown. */
  readonly toScale: boolean;
  /** The smallest thing that has to be read: so many millimetres of the real thing need so many text sizes of paper. */
  readonly legible: { readonly length: number; readonly sizes: number };
}

/** Words by id, or what a person typed. */
export type Text = Says | string;

/** A point in millimetres of the real thing, y up. */
export type Point = readonly [x: number, y: number];

/** Blue pencil: measured. Ink: worked out. Red chalk: needs a hand. Quiet: said beside. */
export type Ink = "measured" | "worked" | "attention" | "quiet";

/** `none` draws only what fills the shape. */
export type Layer = "none" | "outline" | "thin" | "centre" | "hidden" | "hatch" | "weave" | "curve" | "dashed" | "chalk" | "flow" | "grid";

export type Fill =
  /** Cut metal: thin lines, `spacing` in millimetres of paper. */
  | { readonly kind: "hatch"; readonly lean: 45 | -45; readonly spacing: number; readonly around?: readonly Rectangle[] }
  /** Packing: the weave of its family, a plain one where that is not known; `relaxed` is its length along the axis before it was squeezed, over its section. */
  | { readonly kind: "weave"; readonly family?: Family | undefined; readonly relaxed: number }
  | { readonly kind: "solid" };

/** Lowest x, lowest y, highest x, highest y. */
export type Rectangle = readonly [x0: number, y0: number, x1: number, y1: number];

export interface Shape {
  readonly id: string;
  readonly part: string;
  readonly layer: Layer;
  readonly points: readonly Point[];
  readonly closed: boolean;
  readonly fill?: Fill;
  /** Radius of the corners of a closed shape. */
  readonly round?: number;
}

export interface Part {
  readonly id: string;
  readonly called: Text;
}

/** A linear dimension. Extension lines start at the two points; `side` and `row` say where outside the drawing its line runs. */
export interface Dimension {
  readonly id: string;
  readonly side: "above" | "below" | "left" | "right";
  /** 0 is nearest to the drawing. */
  readonly row: number;
  readonly from: Point;
  readonly to: Point;
  /** What is printed: the distance between the points along the dimension line. */
  readonly states: Length;
  readonly ink: Ink;
  /** Not measured yet: a question mark stands for the figure. */
  readonly open?: boolean;
  readonly diameter?: boolean;
  /** To the whole millimetre, or hundredth of an inch: what a rule can do. */
  readonly byRule?: boolean;
  readonly called?: Text;
  /** Dimensions of one chain follow each other and add up to the one whose id is the chain's name. */
  readonly chain?: string;
  /** Its row may be left out where the page is too narrow for it. */
  readonly optional?: boolean;
}

/** A number in a circle, inside its shape when there is room. */
export interface Balloon {
  readonly id: string;
  readonly part: string;
  readonly text: string;
  readonly at: Point;
  /** Radius that is free around the point. */
  readonly room: number;
  /** Led out under the drawing when there is no room; otherwise it is then not shown. */
  readonly lead: boolean;
  /** Stands outside its shape: this far from the point, in text sizes. */
  readonly beside?: Point;
}

export interface LabelLine {
  readonly text: Text;
  readonly ink: Ink;
  readonly bold?: boolean;
}

export interface Label {
  readonly id: string;
  readonly lines: readonly LabelLine[];
  readonly at: Point;
  /**
   * `inside`: on the drawing at the point, when `room` (width, height) is enough there, else under the drawing.
   * `above`: clear above the drawing, beside the point's x. `left`: clear to the left of the drawing, level with the
   * point or as near as others allow. `here`: at the point, the caller knows it is free.
   */
  readonly place: "inside" | "above" | "left" | "here";
  readonly anchor: "start" | "middle" | "end";
  readonly room?: Point;
  /** For a label `here`: how far from the point, in text sizes. */
  readonly offset?: Point;
  /** An arrow of flow from the label down to the point. */
  readonly arrow?: Ink;
}

export interface Note {
  readonly id: string;
  readonly text: Text;
  readonly ink: Ink;
  readonly bold?: boolean;
}

/** Everything between `from` and `to` on one axis is left out and a narrow gap drawn in its place. */
interface LeftOut {
  readonly axis: "x" | "y";
  readonly from: number;
  readonly to: number;
}
