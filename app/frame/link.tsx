import type { ComponentChildren } from "preact";
import { addressOf, go, type Route } from "./route.ts";

/** A link inside the app: an ordinary link for whoever opens it in another tab. */
export function Link({
  to,
  class: look,
  current,
  children,
}: {
  readonly to: Route;
  readonly class?: string;
  readonly current?: boolean;
  readonly children: ComponentChildren;
}) {
  return (
    <a
      href={addressOf(to)}
      class={look}
      aria-current={current ? "page" : undefined}
      onClick={(event) => {
        if (event.metaKey || event.ctrlKey || event.shiftKey || event.altKey || event.button !== 0) return;
        event.preventDefault();
        go(to);
      }}
    >
      {children}
    </a>
  );
}
