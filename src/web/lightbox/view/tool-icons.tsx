import type { ToolName } from "../tools/tools.ts";

const drawings: Readonly<Record<ToolName | "invert" | "turn" | "mirror" | "fit", string>> = {
  move: "M12 4v16M4 12h16M12 4l-2.5 2.5M12 4l2.5 2.5M12 20l-2.5-2.5M12 20l2.5-2.5M4 12l2.5-2.5M4 12l2.5 2.5M20 12l-2.5-2.5M20 12l-2.5 2.5",
  window: "M12 4a8 8 0 1 0 0 16zM12 4a8 8 0 0 1 0 16M14 8.5h4M14 12h5.6M14 15.500h4",
  known: "M4.500 15.500l11-11 4 4-11 11zM8 12l1.800 1.800M10.500 9.500l2.600 2.600M13 7l1.800 1.800",
  trace: "M8 4.500c5 3 .5 6.500 3.500 9.500 2 2 3.500 2.500 4 5.500",
  distance: "M4 7v10M20 7v10M4 12h16M4 12l3-2.500M4 12l3 2.500M20 12l-3-2.500M20 12l-3 2.500",
  spot: "M12 4.500v5M12 14.500v5M4.500 12h5M14.500 12h5M12 12v.01",
  outline: "M5 12c0-5 4-7.500 8-7s7 4 6 8-3 6.500-7.500 6S5 16 5 12z",
  fragment: "M9.500 4.500l2 7M9 14l1.500 5.500M14 4l2.200 7.500M13.500 13.500l1.500 5.500M8.500 12.800l8-1.300",
  fillingEnd: "M9 4v8.500h6V4M12 12.500v.01M9 15.500l3 4.500 3-4.500M12 15v2",
  apex: "M6.500 4c.5 7 2.500 12 5.500 16 3-4 5-9 5.500-16M12 17.500v.01",
  level: "M9 4c0 6 .5 11 3 16M15 4c0 6 0 11-.5 16M5 11.500h14",
  wall: "M5 4c0 7 1 12 3 16M13 4c0 7 .5 12 1.500 16M6 12h7.500M6 12l2-1.500M6 12l2 1.500M13.500 12l-2-1.500M13.500 12l-2 1.500",
  crownRoot: "M12 4v16M9 4h6M9 20h6M6.500 10h11",
  invert: "M5 5h14v14H5zM5 19L19 5M8 16v-5M8 16h5",
  turn: "M19 12a7 7 0 1 1-2.300-5.200M19 4v4.500h-4.500",
  mirror: "M12 4v16M9 7L4.500 17H9zM15 7l4.500 10H15z",
  fit: "M5 9V5h4M15 5h4v4M19 15v4h-4M9 19H5v-4",
};

/** The drawing on a tool's button. */
export const ToolIcon = ({ of }: { readonly of: keyof typeof drawings }) => (
  <svg viewBox="0 0 24 24" aria-hidden="true">
    <path d={drawings[of]} />
  </svg>
);
