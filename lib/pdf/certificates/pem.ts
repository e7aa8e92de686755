/** A certificate as the text that other programs take in. */
export function certificatePem(der: Uint8Array): string {
  const lines = Buffer.from(der).toString('base64').match(/.{1,64}/g) ?? [];
  return ['-----BEGIN CERTIFICATE-----', ...lines, '-----END CERTIFICATE-----', ''].join('\n');
}

/** The certificates of such a text in DER, in their order; text around them is passed over. */
export function certificatesFromPem(pem: string): readonly Uint8Array[] {
  const found = pem.matchAll(/-----BEGIN CERTIFICATE-----([A-Za-z0-9+/=\s]+)-----END CERTIFICATE-----/g);
  return Array.from(found, ([, body = '']) => new Uint8Array(Buffer.from(body, 'base64')));
}
