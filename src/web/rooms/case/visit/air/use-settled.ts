import { useEffect, useState } from "react";

/** A value once it has stood still for a while, so that a slider on its way asks nothing. */
export function useSettled<Value>(value: Value, milliseconds = 250): Value {
  const [settled, settle] = useState(value);
  useEffect(() => {
    const timer = setTimeout(() => settle(value), milliseconds);
    return () => clearTimeout(timer);
  }, [value, milliseconds]);
  return settled;
}
