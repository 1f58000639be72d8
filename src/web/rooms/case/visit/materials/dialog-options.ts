/** What one dialog of materials is given. */
export interface DialogOptions {
  readonly close: () => void;
  /** The minute of the visit's clock; absent while it has not been started. */
  readonly atMin: number | undefined;
}
