import birge from "../../../data/birge-1932/source.json" with { type: "json" };
import burklein from "../../../data/burklein-2021/source.json" with { type: "json" };
import cheungDarvell from "../../../data/cheung-darvell-2007/source.json" with { type: "json" };
import hulsmann from "../../../data/hulsmann-2019/source.json" with { type: "json" };
import marsicovetere from "../../../data/marsicovetere-1996/source.json" with { type: "json" };
import miner from "../../../data/miner-1945/source.json" with { type: "json" };
import parashos from "../../../data/parashos-2004/source.json" with { type: "json" };
import sattapan from "../../../data/sattapan-2000/source.json" with { type: "json" };
import shen from "../../../data/shen-2007/source.json" with { type: "json" };
import spanaki from "../../../data/spanaki-voreadi-2006/source.json" with { type: "json" };
import timoshenko from "../../../data/timoshenko-goodier-1970/source.json" with { type: "json" };
import weibull from "../../../data/weibull-1939/source.json" with { type: "json" };
import wu from "../../../data/wu-2011/source.json" with { type: "json" };
import { sourcesOf } from "../basis.ts";

/** What the explanation of a break rests on. */
export const fractureSources = sourcesOf([
  ...[sattapan, shen, parashos, spanaki],
  ...[marsicovetere, wu],
  ...[cheungDarvell, miner, hulsmann, burklein, weibull],
  ...[timoshenko, birge],
]);
