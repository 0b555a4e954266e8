import type { Entry } from "../entry.ts";

interface Node {
  readonly entry: Entry;
  after: readonly Node[];
  /** When it was come to, and the earliest that leads back to it; 0 before. */
  met: number;
  back: number;
  ring?: Ring;
}

/** Entries that come after each other in a ring: usually one alone, in none. */
interface Ring {
  readonly members: Node[];
  gaveWay: boolean;
}

/**
 * Ids of the entries of one fact that gave way to one that counts and that was
 * written after them, at any remove. Goes by the links alone, whatever ids and
 * clocks say. Those in a forged ring of links do not give way to each other,
 * so that no ring can make everything vanish.
 */
export function gaveWay(entries: readonly Entry[], counts: (entry: Entry) => boolean): ReadonlySet<string> {
  const found = ringsOf(entries);
  // A ring is found after all that it comes after: from the last found on, each is judged before those it comes after.
  for (const ring of found.toReversed()) {
    if (!ring.gaveWay && !ring.members.some(({ entry }) => counts(entry))) continue;
    for (const { after } of ring.members) for (const before of after) if (before.ring && before.ring !== ring) before.ring.gaveWay = true;
  }
  return new Set(found.filter((ring) => ring.gaveWay).flatMap(({ members }) => members.map(({ entry }) => entry.id)));
}

/** Rings of links (strongly connected components, by Tarjan's method, without recursion: a chain may be long). */
function ringsOf(entries: readonly Entry[]): readonly Ring[] {
  const nodes = new Map(entries.map((entry) => [entry.id, { entry, after: [], met: 0, back: 0 } as Node]));
  for (const node of nodes.values()) node.after = node.entry.after.flatMap((id) => nodes.get(id) ?? []);
  const rings: Ring[] = [];
  const open: Node[] = [];
  let met = 0;
  for (const start of nodes.values()) {
    if (start.met > 0) continue;
    const path = [{ node: start, links: start.after.values() }];
    for (let step = path.at(-1); step !== undefined; step = path.at(-1)) {
      const { node, links } = step;
      if (node.met === 0) {
        node.met = node.back = ++met;
        open.push(node);
      }
      const { value: before } = links.next();
      if (before === undefined) {
        path.pop();
        const from = path.at(-1)?.node;
        if (from) from.back = Math.min(from.back, node.back);
        if (node.back === node.met) rings.push(closed(open.splice(open.lastIndexOf(node))));
      } else if (before.met === 0) path.push({ node: before, links: before.after.values() });
      else if (before.ring === undefined) node.back = Math.min(node.back, before.met);
    }
  }
  return rings;
}

function closed(members: Node[]): Ring {
  const ring = { members, gaveWay: false };
  for (const member of members) member.ring = ring;
  return ring;
}
