import { partLater } from "../../frame/later.tsx";

/** Fit to be packed? With its rulers, which come after the drawing. */
export const Verdicts = partLater(() => import("../../parts/verdicts.tsx").then((part) => part.Verdicts));

/** Prints the card of this box; the card itself comes with the first tap. */
export const CardButton = partLater(() => import("../../parts/card-button.tsx").then((part) => part.CardButton));
