/**
 * What stops X-rays here, in 1/mm at 30, 40, 50 and 60 keV. Teeth and bone are mixtures by volume of mineral
 * (hydroxyapatite, 3.16 g/cm3) and soft tissue (water at 1.05 g/cm3).
 * @source mineral and soft: total mass attenuation of hydroxyapatite and water, xraylib 4.0.0 (seen); metals and fillings: elements'
 * values of the NIST tables (memory) times common compositions and densities (common practice)
 */
export const attenuationPerMm = {
  soft: [0.03944, 0.02817, 0.02384, 0.02162],
  mineral: [0.66335, 0.31208, 0.1854, 0.12852],
  guttaPercha: [1.9, 1.35, 0.85, 0.55],
  nickelTitanium: [4.9, 2.28, 1.25, 0.78],
  steel: [6.4, 2.87, 1.54, 0.95],
  amalgam: [30, 15.5, 9.2, 6.1],
  resinComposite: [0.78, 0.41, 0.27, 0.2],
  temporaryFilling: [0.7, 0.38, 0.26, 0.19],
  calciumHydroxide: [0.5, 0.3, 0.18, 0.12],
  bioceramicCement: [1.2, 0.72, 0.47, 0.33],
  silicone: [0.32, 0.18, 0.115, 0.085],
  glassFibrePost: [0.55, 0.3, 0.2, 0.15],
} as const;

/** One of the materials of {@link attenuationPerMm}. */
export type Material = keyof typeof attenuationPerMm;

/**
 * Parts of a 65 kV intra-oral beam behind 1.5 mm of aluminium at 30, 40, 50 and 60 keV, as the receptor counts them.
 * @source common practice
 */
export const beamParts = [0.3, 0.38, 0.22, 0.1] as const;

/** Mineral by volume: enamel 96 %, dentine 70 %, compact bone 65 % by mass at 2.9, 2.14 and 1.92 g/cm3 (memory). */
export const mineralPart = { enamel: 0.88, dentine: 0.47, cementum: 0.42, compactBone: 0.4, strut: 0.32 } as const;

/** Lengths of ray in each material for a picture's pixels. */
export type Lengths = { readonly [name in Material]?: Float32Array };

/**
 * The part of the beam that comes through, pixel by pixel.
 * Takes lengths in mm. Gives 1 for an empty ray (Beer-Lambert for each energy, then the sum).
 * @source A. Beer 1852 and J. H. Lambert 1760, as in every textbook (memory)
 */
export function transmission(lengths: Lengths, pixels: number): Float32Array {
  const passed = new Float32Array(pixels);
  const present = (Object.keys(attenuationPerMm) as Material[]).flatMap((name) => {
    const length = lengths[name];
    return length === undefined ? [] : [{ perMm: attenuationPerMm[name], length }];
  });
  for (let energy = 0; energy < beamParts.length; energy++) {
    const part = beamParts[energy] ?? 0;
    const terms = present.map(({ perMm, length }) => ({ mu: perMm[energy] ?? 0, length }));
    for (let at = 0; at < pixels; at++) {
      let sum = 0;
      for (const { mu, length } of terms) sum += mu * (length[at] as number);
      passed[at] = (passed[at] as number) + part * Math.exp(-sum);
    }
  }
  return passed;
}
