import { createContext, useContext } from "react";

/** The names of the canals that the anatomy of the case knows. */
export const CanalNames = createContext<readonly string[]>([]);

/** See {@link CanalNames}. */
export const useCanalNames = (): readonly string[] => useContext(CanalNames);
