import abattan from "../../../../data/abattan-2023/source.json" with { type: "json" };
import allard from "../../../../data/allard-andersson-1992/source.json" with { type: "json" };
import amoore from "../../../../data/amoore-hautala-1983/source.json" with { type: "json" };
import baldwin from "../../../../data/baldwin-maynard-1998/source.json" with { type: "json" };
import chutich from "../../../../data/chutich-1998/source.json" with { type: "json" };
import crc from "../../../../data/crc-physical-constants/source.json" with { type: "json" };
import iris from "../../../../data/epa-iris-chloroform-2001/source.json" with { type: "json" };
import iarc from "../../../../data/iarc-monographs/source.json" with { type: "json" };
import keil from "../../../../data/keil-2009/source.json" with { type: "json" };
import monteiro from "../../../../data/monteiro-2011/source.json" with { type: "json" };
import nicas from "../../../../data/nicas-1996/source.json" with { type: "json" };
import operatory from "../../../../data/operatory-air-1992/source.json" with { type: "json" };
import ren from "../../../../data/ren-2021/source.json" with { type: "json" };
import { sourcesOf } from "../../basis.ts";
import { practiceFiles } from "./practice-points.ts";
import { limitFiles } from "./published-limits.ts";

/** Everything that the vapour of a solvent rests on. */
export const solventSources = sourcesOf([
  ...[crc, monteiro, nicas, keil, abattan, baldwin, ren],
  ...limitFiles,
  ...[iarc, amoore, operatory, allard, chutich, iris],
  ...practiceFiles,
]);
