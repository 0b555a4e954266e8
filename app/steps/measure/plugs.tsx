import type { ComponentType } from "preact";
import { useEffect, useState } from "preact/hooks";
import type { Box } from "../../kept/box.ts";

type OfOneBox = ComponentType<{ readonly box: Box }>;

const verdicts = import.meta.glob<{ readonly Verdicts: OfOneBox }>("../../parts/verdicts.tsx");
const card = import.meta.glob<{ readonly CardButton: OfOneBox }>("../../parts/card-button.tsx");

/** A part of the page that comes when it is there. */
function Coming({ load, box }: { readonly load: (() => Promise<OfOneBox>) | undefined; readonly box: Box }) {
  const [part, setPart] = useState<{ readonly Part: OfOneBox }>();
  useEffect(() => {
    void load?.().then((Part) => setPart({ Part }));
  }, []);
  return part === undefined ? null : <part.Part box={box} />;
}

const [loadVerdicts] = Object.values(verdicts);
const [loadCard] = Object.values(card);

/** Fit to be packed? Under the drawing. */
export function VerdictsHere({ box }: { readonly box: Box }) {
  return <Coming load={loadVerdicts && (() => loadVerdicts().then(({ Verdicts }) => Verdicts))} box={box} />;
}

/** The card of this box. */
export function CardHere({ box }: { readonly box: Box }) {
  return <Coming load={loadCard && (() => loadCard().then(({ CardButton }) => CardButton))} box={box} />;
}
