'use server';

import { DescribeVenueSchema } from '@/lib/events/venue-input';
import { DescribeAreaSchema, describe, describePart } from '@/lib/server/events/venue-page';
import { openAction } from '@/lib/server/forms/open-action';

export const describeVenueAction = openAction({ schema: DescribeVenueSchema, run: describe });

export const describeAreaAction = openAction({ schema: DescribeAreaSchema, run: describePart });
