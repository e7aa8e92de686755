import { createContext } from 'react';

/** Told the number of each page as it is set. A page is set more than once while their count is found out. */
export const PageReport = createContext<(pageNumber: number) => void>(() => undefined);
