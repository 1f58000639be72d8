/** Hears how far long work is: steps done, all steps. */
export type Progress = (done: number, all: number) => void;
