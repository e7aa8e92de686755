import './emergency.css';
import type { ReactNode } from 'react';

export default function EmergencyLayout({ children }: { readonly children: ReactNode }) {
  return children;
}
