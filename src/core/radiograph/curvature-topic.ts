import { defineTopic } from "../topic.ts";
import { anglesInPx } from "./curvature/angles-in-px.ts";
import { curvatureSources } from "./curvature/curvature-basis.ts";
import { curvatureInput } from "./curvature/curvature-input.ts";
import { curvatureOutput } from "./curvature/curvature-output.ts";
import { measuresInMm } from "./curvature/measures-in-mm.ts";

/**
 * One traced course and every published measure of its curvature, each with an interval.
 * @throws Refusal `trace.tooFewPoints` under 4 different points; `input.impossible` where points mix plane and
 * space, or mm and px.
 * @source Schneider 1971, Weine 1982, Pruett 1997, Gunday 2005, Estrela 2008 (memory); docs/methods/curvature.md
 */
export const curvatureTopic = defineTopic({
  name: "curvature",
  version: 4,
  summary: "Curvature of one traced canal: every published measure, each bend, and the profile.",
  input: curvatureInput,
  output: curvatureOutput,
  sources: curvatureSources,
  compute: (input) => (input.unit === "px" ? anglesInPx(input) : measuresInMm(input)),
});
