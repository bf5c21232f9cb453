import { createContext, useContext } from 'react';
import type { Client } from '../client/client.ts';
import type { Building } from './keepBuilding.ts';

/** Where the page gets its part from. */
export interface PartSource {
  readonly client: Client;
  readonly building: Building;
}

export const PartContext = createContext<PartSource | undefined>(undefined);

/** The client and the building that the page was mounted with. */
export function usePartSource(): PartSource {
  const source = useContext(PartContext);
  if (!source) throw new Error('The page must be mounted inside a PartContext');
  return source;
}
