/** The solvent of a visit in the air that is breathed, and past the foramen. */
export const AirSection = () => null;
