import { useEffect, useState } from "preact/hooks";

/** Calls back whenever the address changes, between a part's first drawing and its listening too. */
export function useAddressChange(onChange: () => void): void {
  const [drawn] = useState(location.hash);
  useEffect(() => {
    if (location.hash !== drawn) onChange();
    addEventListener("hashchange", onChange);
    return () => removeEventListener("hashchange", onChange);
  }, []);
}
