import { createContext, useContext } from "react";
import type { CanalStanding } from "../../../record/canal-states.ts";

/** The canals that the case knows, root by root, each as its last day left it. */
export const Canals = createContext<Readonly<Record<string, CanalStanding>>>({});

/** See {@link Canals}. */
export const useCanals = (): Readonly<Record<string, CanalStanding>> => useContext(Canals);
