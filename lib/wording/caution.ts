/** The caution that stands on every screen and on every page of every paper. */
export const CAUTION = 'Screening aid. The local fire code, the fire service, the maker of the pack and your safety officer come first.';

/** The caution on papers that are handed to a venue: there are two safety officers then. */
export const VENUE_CAUTION = 'Screening aid. Local fire code, fire service, maker of the packs and the safety officers of venue and school come first.';
