import type { BoneShape } from "../anatomy/alveolar-bone.ts";
import { placedTooth } from "../anatomy/placed-tooth.ts";
import type { ToothShape } from "../anatomy/tooth.ts";
import type { JawSegment } from "../jaw-segment.ts";
import { lowerCanine, upperCentralIncisor } from "../teeth/front-tooth.ts";
import { lowerFirstPremolar } from "../teeth/premolar.ts";
import { toothPoint as at } from "../tooth-point.ts";

const bone: BoneShape = {
  buccal: [
    [-2, 3.6],
    [2, 4],
    [8, 4.2],
    [16, 4.6],
    [30, 5.2],
  ],
  lingual: [
    [-2, -3.8],
    [2, -4.6],
    [8, -5.6],
    [16, -6.6],
    [30, -7],
  ],
  crest: [
    [-20, 1.3],
    [-4.4, 0.6],
    [0, 1.7],
    [4.4, 0.8],
    [20, 1.5],
  ],
  plateMm: [
    [0, 0.4],
    [4, 0.6],
    [12, 0.9],
    [30, 1.2],
  ],
  crestLayerMm: 0.3,
};

/** A front tooth between two neighbours, each as far from it as given. */
function frontSegment(
  tooth: ToothShape,
  neighbours: { readonly mesial: readonly [ToothShape, number]; readonly distal: readonly [ToothShape, number] },
  seed: number,
): JawSegment {
  const [mesial, mesialMm] = neighbours.mesial;
  const [distal, distalMm] = neighbours.distal;
  return {
    teeth: [
      placedTooth(tooth, at(0, 0, 0)),
      placedTooth(mesial, at(-mesialMm, 0, 0), -1),
      placedTooth(distal, at(distalMm, 0.2, 0.2), 2),
    ],
    bone,
    nets: [
      {
        spacingMm: { x: 1.2, y: 2.4, z: 1.15 },
        joins: { x: 0.62, y: 0.12, z: 0.72 },
        radiusMm: 0.062,
        depth: 6,
        seed: seed + 11,
      },
      {
        spacingMm: { x: 1.5, y: 1.7, z: 1.5 },
        joins: { x: 0.5, y: 0.4, z: 0.5 },
        radiusMm: 0.075,
        depth: 1.5,
        seed: seed + 12,
      },
    ],
    hollows: [],
    lesions: [],
    shaped: {},
    insets: [],
    strands: [],
    veilMm: 10,
    box: { from: at(-14, -9, -12.5), to: at(14, 8, 24) },
    seed,
  };
}

/** Upper jaw around a central incisor: the other one to mesial, a smaller neighbour to distal. */
export const upperFrontSegment = (seed: number): JawSegment =>
  frontSegment(upperCentralIncisor, { mesial: [upperCentralIncisor, 8.8], distal: [upperCentralIncisor, 8.7] }, seed);

/** Lower jaw around a canine: its neighbours are taken as a canine and a premolar. */
export const lowerCanineSegment = (seed: number): JawSegment =>
  frontSegment(lowerCanine, { mesial: [lowerCanine, 7], distal: [lowerFirstPremolar, 7.4] }, seed);
