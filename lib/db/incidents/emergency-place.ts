import type { GuidanceFieldId } from '@/lib/content/model';
import type { Db } from '../client';

/** What is said in an emergency at one place: whom to call, where to meet. */
export interface EmergencyPlace {
  readonly schoolName: string;
  /** null: the school itself */
  readonly siteId: string | null;
  readonly siteName: string | null;
  readonly values: Readonly<Partial<Record<GuidanceFieldId, string>>>;
  /** other places of the school with an address of their own */
  readonly sites: readonly { readonly id: string; readonly name: string }[];
}

const SITE_COLUMNS = { id: true, name: true, kind: true, address: true, emergencyNumber: true, meetingPlace: true, secondMeetingPlace: true } as const;

/**
 * Returns what a school has filled in for emergencies, or null when there is no such school. At a site, what the site
 * says comes first. A venue away from school has meeting places of its own or none: the school's would lead people
 * astray.
 */
export async function getEmergencyPlace(db: Pick<Db, 'school' | 'site'>, schoolId: string, siteId: string | null): Promise<EmergencyPlace | null> {
  const school = await db.school.findUnique({ where: { id: schoolId } });
  if (school === null) return null;
  const sites = await db.site.findMany({ where: { schoolId, archivedAt: null }, select: SITE_COLUMNS, orderBy: { name: 'asc' } });
  const site = sites.find(({ id }) => id === siteId) ?? null;
  const own = site === null || site.kind === 'own';
  const values = {
    number: site?.emergencyNumber ?? school.emergencyNumber,
    meetingPoint: site?.meetingPlace ?? (own ? school.meetingPlace : undefined),
    secondMeetingPoint: site?.secondMeetingPlace ?? (own ? school.secondMeetingPlace ?? undefined : undefined),
    siteAddress: site?.address ?? school.address,
    officerPhone: school.officerPhone ?? undefined,
  };
  return { schoolName: school.name, siteId: site?.id ?? null, siteName: site?.name ?? null, values, sites: sites.map(({ id, name }) => ({ id, name })) };
}
