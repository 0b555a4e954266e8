import type { Block } from "../blocks/block.ts";
import { area } from "../setting.ts";
import type { PdfCanvas } from "./canvas.ts";
import type { Structure } from "./document.ts";
import { points } from "./points.ts";

/** Left free at the top and foot of each sheet for its title and its closing line. */
const head = 8;
const foot = 7;
const room = area.height - head - foot;

/** Puts blocks on sheets, one under the other; what belongs together stays together. */
export class Flow {
  readonly #canvas: PdfCanvas;
  readonly #paper: readonly [number, number];
  readonly #tree: Structure;
  #used = 0;
  #again: Block | undefined;
  pages = 0;

  constructor(canvas: PdfCanvas, paper: readonly [number, number], tree: Structure) {
    this.#canvas = canvas;
    this.#paper = paper;
    this.#tree = tree;
    this.newPage();
  }

  /** The corner of the area that is printed on, on any sheet. */
  get corner(): readonly [left: number, top: number] {
    return [(this.#paper[0] - area.width) / 2, (this.#paper[1] - area.height) / 2];
  }

  /** Millimetres left on this sheet. */
  get left(): number {
    return room - this.#used;
  }

  newPage(): void {
    this.#canvas.doc.addPage({ size: [points(this.#paper[0]), points(this.#paper[1])], margin: 0 });
    this.pages++;
    this.#used = 0;
    if (this.#again) this.#put(this.#again);
  }

  /** What stands again at the top of each further sheet, until it is changed. */
  repeat(block: Block | undefined): void {
    this.#again = block;
  }

  /** Blocks that are never parted by the end of a sheet, unless they are longer than one. */
  together(blocks: readonly Block[]): void {
    const height = blocks.reduce((sum, block) => sum + block.height, 0);
    if (height > this.left && this.#used > 0) this.newPage();
    for (const block of blocks) {
      if (block.height > this.left && this.#used > 0) this.newPage();
      this.#put(block);
    }
  }

  /** Empty paper, none at the top of a sheet. */
  gap(height: number): void {
    if (this.#used > 0) this.#used = Math.min(room, this.#used + height);
  }

  #put(block: Block): void {
    const { doc } = this.#canvas;
    const [left, top] = this.corner;
    const content = doc.markStructureContent(block.tag);
    block.paint(this.#canvas, left, top + head + this.#used);
    doc.endMarkedContent();
    this.#tree.add(doc.struct(block.tag, block.alt === undefined ? {} : { alt: block.alt }, [content]));
    this.#used += block.height;
  }
}
