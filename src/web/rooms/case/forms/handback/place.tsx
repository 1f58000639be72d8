import type { ReactNode } from "react";
import type { HandbackGap } from "../../../../../record/handback-gaps.ts";

type At = NonNullable<HandbackGap["at"]>;

/** A field by the name under which what is missing leads to it. */
export const Place = ({ of, wide, children }: { of: At; wide?: boolean; children: ReactNode }) => (
  <div className="handback-place" data-place={of} data-wide={wide}>
    {children}
  </div>
);

/** Brings the person to a field. */
export function goTo(at: At): void {
  const place = document.querySelector<HTMLElement>(`[data-place="${at}"]`);
  place?.querySelector<HTMLElement>("textarea, input:checked, input, select, button")?.focus();
  place?.scrollIntoView({ block: "center" });
}
