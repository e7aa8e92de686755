/** The caution that stands on every screen and on every page of every paper. */
export const CAUTION = 'Screening aid. The local fire code, the fire service, the maker of the pack and your safety officer come first.';
