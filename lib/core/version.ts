/** Version of the calculation itself; it changes when the same content and answers would give other figures. */
export const ENGINE_VERSION = '1.0.0';
