import { Section } from '@/app/_components/ui/section';
import type { SchoolCertificate } from '@/lib/server/papers/certificates';
import { type DateStyle, dayWords } from '@/lib/wording/dates';

/** The certificate by which the school vouches for those who sign: to be handed to whoever checks papers elsewhere. */
export function CertificatePart({ certificate, style }: { readonly certificate: SchoolCertificate | null; readonly style: DateStyle }) {
  return (
    <Section id="certificate" title="The school’s certificate">
      {certificate === null ? <p>It is made with the first paper that somebody signs.</p> : (
        <>
          <p>Whoever checks a paper of yours with another program gives it this file. Read them the fingerprint by telephone, so that they know it is yours.</p>
          <dl className="facts">
            <div><dt>Fingerprint (SHA-256)</dt><dd className="num wrap-anywhere">{certificate.fingerprint.match(/.{4}/g)?.join(' ')}</dd></div>
            <div><dt>Valid</dt><dd>{dayWords(certificate.validFrom, style)} to {dayWords(certificate.validUntil, style)}</dd></div>
          </dl>
          <p className="row after"><a href={`/verify/certificate/${certificate.fingerprint}.pem`} download>Save as PEM</a> <a href={`/verify/certificate/${certificate.fingerprint}.der`} download>Save as DER</a></p>
        </>
      )}
    </Section>
  );
}
