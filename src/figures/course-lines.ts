import type { DrawnCourse } from "./drawn-course.ts";
import { element, numberText, pathThrough, type SvgNode } from "./svg-tree.ts";
import { labelNode } from "./text-label.ts";
import type { Theme } from "./theme.ts";

/** A canal's course as a thin line. */
export const courseLine = (course: DrawnCourse, theme: Theme): SvgNode =>
  element("path", {
    "data-part": "course",
    d: pathThrough(course.part(0, course.lengthMm)),
    ...{ fill: "none", stroke: theme.course, "stroke-width": 1.6, "stroke-linejoin": "round" },
  });

/** Its orifice as a ring and its end as a disc, as every film has them. */
export function courseEnds(course: DrawnCourse, theme: Theme): readonly SvgNode[] {
  const [start, end] = [course.at(0), course.at(course.lengthMm)];
  const pen = { stroke: theme.course, "stroke-width": 2 };
  return [
    element("circle", { cx: start.x, cy: start.y, r: 4.5, fill: theme.surface, ...pen }),
    element("circle", { cx: end.x, cy: end.y, r: 4, fill: theme.course }),
  ];
}

/** How long some mm are in the drawing, with their number. */
export function scaleBar(
  { perMm }: DrawnCourse,
  at: { readonly x: number; readonly y: number },
  theme: Theme,
): SvgNode[] {
  const mm = perMm * 5 > 90 ? 2 : 5;
  const long = mm * perMm;
  return [
    element("path", {
      "data-part": "scale",
      d: `M${numberText(at.x)} ${numberText(at.y - 4)}v8M${numberText(at.x)} ${numberText(at.y)}h${numberText(long)}m0 -4v8`,
      ...{ fill: "none", stroke: theme.quiet, "stroke-width": 1.2 },
    }),
    labelNode({ text: `${mm} mm`, x: at.x + long + 6, y: at.y + 4, size: 11.5, fill: theme.quiet }),
  ];
}
