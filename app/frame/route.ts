import { signal } from "@preact/signals";

/** Steps of the work that have a screen for each box. */
export const steps = ["measure", "choose", "rings", "fit", "logbook"] as const;
export type StepName = (typeof steps)[number];

/** Where the reader is. */
export type Route =
  | { readonly at: "site" }
  | { readonly at: "new-box" }
  | { readonly at: "settings" }
  | { readonly at: "box"; readonly box: string; readonly step: StepName; readonly rest: readonly string[] }
  | { readonly at: "nowhere"; readonly path: string };

const path = signal(location.pathname);
/** Whether the reader has gone anywhere since the page was loaded. */
let gone = false;
function arrive(): void {
  gone = true;
  path.value = location.pathname;
}
addEventListener("popstate", arrive);

/** What an address stands for. */
function routeOf(address: string): Route {
  const [first, second, third = "measure", ...rest] = address
    .split("/")
    .filter((part) => part !== "")
    .map(decodeURIComponent);
  if (first === undefined) return { at: "site" };
  if (first === "new-box" || first === "settings") return { at: first };
  const step = steps.find((name) => name === third);
  if (first === "box" && second !== undefined && step) return { at: "box", box: second, step, rest };
  return { at: "nowhere", path: address };
}

/** The address of a place. */
export function addressOf(route: Route): string {
  if (route.at === "box") return `/${["box", route.box, route.step, ...route.rest].map(encodeURIComponent).join("/")}`;
  if (route.at === "nowhere") return route.path;
  return route.at === "site" ? "/" : `/${route.at}`;
}

/** Where the reader is; read inside a component it is drawn again on the way. */
export function here(): Route {
  return routeOf(path.value);
}

/** Goes to a place; the browser's back comes back to where it was left. */
export function go(route: Route, instead = false): void {
  const address = addressOf(route);
  if (address === location.pathname) return;
  if (instead) history.replaceState(null, "", address);
  else history.pushState(null, "", address);
  arrive();
  scrollTo(0, 0);
}

/** After going somewhere whose way was taken off the screen, the focus would be nowhere: it goes to what came. */
export function focusOn(arrived: HTMLElement | null): void {
  if (gone && document.activeElement === document.body) arrived?.focus({ preventScroll: true });
}

/** A place on a box. */
export function onBox(box: string, step: StepName, ...rest: readonly string[]): Route {
  return { at: "box", box, step, rest };
}
