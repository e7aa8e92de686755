// Object identifiers, each with where it is defined.

/** RFC 5652 */
export const DATA = '1.2.840.113549.1.7.1';
export const SIGNED_DATA = '1.2.840.113549.1.7.2';
export const CONTENT_TYPE = '1.2.840.113549.1.9.3';
export const MESSAGE_DIGEST = '1.2.840.113549.1.9.4';
/** RFC 5035 */
export const SIGNING_CERTIFICATE_V2 = '1.2.840.113549.1.9.16.2.47';
/** RFC 3161 */
export const TIMESTAMP_TOKEN = '1.2.840.113549.1.9.16.2.14';
export const TIMESTAMP_CONTENT = '1.2.840.113549.1.9.16.1.4';
/** RFC 5754 */
export const SHA_256 = '2.16.840.1.101.3.4.2.1';
/** RFC 5758 */
export const ECDSA_WITH_SHA_256 = '1.2.840.10045.4.3.2';
