import { element, type Figure, figureOf, type SvgNode } from "./svg-tree.ts";
import { type Theme, type ThemeName, themes } from "./theme.ts";

/** A place that is marked on a film. */
export type MarkedPlace = "apex" | "cusp" | "crest" | "entrance";

const view = { width: 200, height: 264 };

interface Drawing {
  readonly tooth: string;
  readonly enamel: string;
  /** Chamber and canals. */
  readonly pulp: readonly string[];
  readonly bone: readonly string[];
}

/** A tooth with one root, apex down. */
const single: Drawing = {
  tooth:
    "M100 22C82 26 66 44 61 72C58 90 63 102 70 110C76 148 84 206 100 242C116 206 124 148 130 110C137 102 142 90 139 72C134 44 118 26 100 22Z",
  enamel: "M70 110Q100 90 130 110",
  pulp: ["M100 72C93 82 93 98 96 114L99 236L101 236L104 114C107 98 107 82 100 72Z"],
  bone: ["M8 134H60Q69 134 71 144C77 190 85 228 95 252", "M192 134H140Q131 134 129 144C123 190 115 228 105 252"],
};

/** A tooth with two roots, apex down. */
const double: Drawing = {
  tooth:
    "M44 58C40 42 56 28 72 33C86 37 92 44 100 44C108 44 114 37 128 33C144 28 160 42 156 58C160 80 158 96 150 108C152 150 150 206 138 238C130 252 122 244 119 228C115 194 110 164 100 152C90 164 85 194 81 228C78 244 70 252 62 238C50 206 48 150 50 108C42 96 40 80 44 58Z",
  enamel: "M50 108Q100 84 150 108",
  pulp: [
    "M72 84Q100 92 128 84L131 116Q100 124 69 116Z",
    "M69 114C64 150 64 200 70 234L72 234C68 196 71 150 77 118Z",
    "M131 114C136 150 136 200 130 234L128 234C132 196 129 150 123 118Z",
  ],
  bone: [
    "M8 134H36Q44 134 45 144C46 180 50 222 60 250",
    "M192 134H164Q156 134 155 144C154 180 150 222 140 250",
    "M86 244C90 204 94 174 100 164C106 174 110 204 114 244",
  ],
};

const places: Readonly<Record<MarkedPlace, { on: Drawing; at: readonly [number, number]; says: string }>> = {
  apex: { on: single, at: [100, 242], says: "Where the root ends: the farthest place of its outline." },
  cusp: { on: single, at: [100, 22], says: "The highest place of the cusp's outline, as the film shows it." },
  crest: { on: single, at: [68, 135], says: "The corner where the edge of the bone meets the ligament space." },
  entrance: { on: double, at: [70, 116], says: "Where the canal leaves the floor of the chamber." },
};

/** What is meant by a place that is marked on a film: a tooth with a ring round the place. */
export function placeToMark(
  place: MarkedPlace,
  { theme: name, widthPx }: { theme: ThemeName; widthPx: number },
): Figure {
  const theme = themes[name];
  const { on, at, says } = places[place];
  return figureOf(view, widthPx, says, [...toothNodes(on, theme), ...ringNodes(at, theme)]);
}

function toothNodes({ tooth, enamel, pulp, bone }: Drawing, theme: Theme): SvgNode[] {
  const line = { fill: "none", stroke: theme.hairline, "stroke-width": 1.6, "stroke-linecap": "round" } as const;
  return [
    ...bone.map((d) => element("path", { d, ...line, "stroke-dasharray": "1 5", "stroke-width": 2.4 })),
    element("path", { d: tooth, fill: theme.dentine, stroke: theme.quiet, "stroke-width": 1.6 }),
    element("path", { d: enamel, ...line }),
    ...pulp.map((d) => element("path", { d, fill: theme.ground, stroke: theme.hairline, "stroke-width": 1 })),
  ];
}

/** A ring with four ticks and an open middle, so that the place itself is seen. */
function ringNodes([x, y]: readonly [number, number], theme: Theme): SvgNode[] {
  const [near, far] = [5, 19];
  const ticks = `M${x - far} ${y}H${x - near}M${x + near} ${y}H${x + far}M${x} ${y - far}V${y - near}M${x} ${y + near}V${y + far}`;
  const line = { fill: "none", stroke: theme.accent, "stroke-width": 2 } as const;
  return [
    element("circle", { "data-part": "place", cx: x, cy: y, r: 12, ...line }),
    element("path", { d: ticks, ...line }),
  ];
}
