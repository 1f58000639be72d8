import { expect, test } from "vitest";
import { type StockHolds, stockInWords } from "./stock-words.ts";

const lidocaine = { kind: "anaesthetic", agent: "lidocaine", percent: 2, cartridgeMl: 1.8 } as const;

test.each<[StockHolds, string]>([
  [lidocaine, "lidocaine 2 %, plain"],
  [{ ...lidocaine, vasoconstrictor: { name: "epinephrine", ratio: 100_000 } }, "lidocaine 2 %, epinephrine 1:100000"],
  [{ ...lidocaine, vasoconstrictor: { name: "felypressin", iuPerMl: 0.03 } }, "lidocaine 2 %, felypressin 0.03 IU/ml"],
  [{ kind: "irrigant", solution: "sodium hypochlorite", percent: 3 }, "sodium hypochlorite 3 %"],
  [{ kind: "irrigant", solution: "saline" }, "saline"],
  [{ kind: "irrigant", solution: "other", named: "ozone water" }, "ozone water"],
  [{ kind: "solvent", solvent: "xylene" }, "xylene"],
  [{ kind: "medicament", medicament: "calciumHydroxide" }, "calcium hydroxide"],
  [{ kind: "medicament", medicament: "other", detail: "a paste of two" }, "a paste of two"],
  [{ kind: "temporary", material: "glass ionomer" }, "glass ionomer"],
  [{ kind: "filling", material: "calcium silicate", as: "sealer" }, "calcium silicate, sealer"],
])("%o is called by its kind", (holds, words) => {
  expect(stockInWords(holds)).toBe(words);
});
