import type { CabinetItemOf } from "../../../src/record/cabinet/cabinet-item.ts";

type Stock = CabinetItemOf<"stock">["body"];

const epinephrine = (ratio: number) => ({ name: "epinephrine", ratio }) as const;
const demo = true as const;

/** What the demo's clinic keeps, by kind of material; lots and days are invented. */
export const demoStock: Readonly<Record<string, Stock>> = {
  "demo-stock-articaine": {
    name: "Articaine 4 %, epinephrine 1:100 000",
    holds: {
      ...{ kind: "anaesthetic", agent: "articaine", percent: 4 },
      ...{ vasoconstrictor: epinephrine(100_000), cartridgeMl: 1.7 },
    },
    ...{ lot: "A2210", expires: "2027-08-31", demo },
  },
  "demo-stock-lidocaine": {
    name: "Lidocaine 2 %, epinephrine 1:100 000",
    holds: {
      ...{ kind: "anaesthetic", agent: "lidocaine", percent: 2 },
      ...{ vasoconstrictor: epinephrine(100_000), cartridgeMl: 1.8 },
    },
    ...{ lot: "L0871", expires: "2027-05-31", demo },
  },
  "demo-stock-mepivacaine": {
    name: "Mepivacaine 3 %, plain",
    holds: { kind: "anaesthetic", agent: "mepivacaine", percent: 3, cartridgeMl: 1.8 },
    ...{ lot: "P1140", expires: "2027-02-28", demo },
  },
  "demo-stock-hypochlorite": {
    name: "Hypochlorite 3 %",
    holds: { kind: "irrigant", solution: "sodium hypochlorite", percent: 3, activated: "no" },
    ...{ lot: "H5512", expires: "2027-01-31", demo },
  },
  "demo-stock-edta": {
    name: "EDTA 17 %",
    holds: { kind: "irrigant", solution: "EDTA", percent: 17, volumeMl: 4, minutes: 2, activated: "no" },
    ...{ lot: "E3307", expires: "2027-11-30", demo },
  },
  "demo-stock-saline": {
    name: "Saline",
    holds: { kind: "irrigant", solution: "saline", activated: "no" },
    ...{ lot: "N9001", expires: "2028-03-31", demo },
  },
  "demo-stock-solvent": {
    name: "Chloroform, in a closed glass",
    holds: { kind: "solvent", solvent: "chloroform", volumeMl: 0.2 },
    ...{ lot: "R0417", expires: "2027-06-30", demo },
  },
  "demo-stock-dressing": {
    name: "Calcium hydroxide paste, water-based",
    holds: { kind: "medicament", medicament: "calciumHydroxide", detail: "water-based paste" },
    ...{ lot: "K3602", expires: "2027-06-30", demo },
  },
  "demo-stock-temporary": {
    name: "Glass ionomer",
    holds: { kind: "temporary", material: "glass ionomer over a foam pellet" },
    ...{ lot: "G7714", expires: "2027-09-30", demo },
  },
  "demo-stock-sealer": {
    name: "Calcium silicate sealer",
    holds: { kind: "filling", material: "calcium silicate sealer", as: "sealer" },
    ...{ lot: "S6102", expires: "2026-12-31", demo },
  },
  "demo-stock-core": {
    name: "Gutta-percha cones",
    holds: { kind: "filling", material: "gutta-percha", as: "core" },
    ...{ lot: "T2026", expires: "2028-01-31", demo },
  },
  "demo-stock-composite": {
    name: "Composite, for the build-up",
    holds: { kind: "filling", material: "composite", as: "buildUp" },
    ...{ lot: "C9120", expires: "2027-04-30", demo },
  },
};
