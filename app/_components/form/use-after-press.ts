import { useCallback, useEffect, useRef } from 'react';

/**
 * Returns a function that does something at once, or when the button of the mouse that is held down is up again and its
 * click has come. What moves away under a pointer is not pressed: a fault that appears when a field is left by pressing
 * on something below would push that down.
 */
export function useAfterPress(): (work: () => void) => void {
  const isDown = useRef(false);
  const waiting = useRef<(() => void)[]>([]);
  useEffect(() => {
    const down = (): void => { isDown.current = true; };
    const up = (): void => {
      isDown.current = false;
      setTimeout(() => { for (const work of waiting.current.splice(0)) work(); });
    };
    document.addEventListener('mousedown', down, true);
    for (const end of ENDS) document.addEventListener(end, up, true);
    return () => {
      document.removeEventListener('mousedown', down, true);
      for (const end of ENDS) document.removeEventListener(end, up, true);
    };
  }, []);
  return useCallback((work) => {
    if (isDown.current) waiting.current.push(work);
    else work();
  }, []);
}

const ENDS = ['mouseup', 'dragend'] as const;
