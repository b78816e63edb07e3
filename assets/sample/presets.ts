/** What is packed together. */
import type { SamplePreset } from './shape.ts';

export const presets: readonly SamplePreset[] = [
  {
    name: 'One camera',
    needs: [
      { item: 'Camera A', count: 1 },
      { item: 'Standard zoom', count: 1 },
      { item: 'Camera battery', count: 4 },
      { item: 'Memory card 512', count: 3 },
      { item: 'Field disk 4 TB', count: 1 },
      { item: 'Tripod, tall', count: 1 },
      { item: 'Wireless microphone', count: 2 },
      { item: 'Rolling case', count: 1 },
    ],
  },
  {
    name: 'Two cameras',
    needs: [
      { item: 'Camera A', count: 1 },
      { item: 'Camera B', count: 1 },
      { item: 'Standard zoom', count: 2 },
      { item: 'Long zoom', count: 1 },
      { item: 'Camera battery', count: 8 },
      { item: 'Memory card 512', count: 6 },
      { item: 'Field disk 4 TB', count: 2 },
      { item: 'Tripod, tall', count: 2 },
      { item: 'Wireless microphone', count: 2 },
      { item: 'Field recorder', count: 1 },
      { item: 'Rolling case', count: 2 },
    ],
  },
  {
    name: 'Mixing desk',
    needs: [
      { item: 'Mixing desk, four inputs', count: 1 },
      { item: 'Monitor, twenty-four inch', count: 1 },
      { item: 'Video cable 30 m', count: 4 },
      { item: 'Stream encoder', count: 1 },
      { item: 'Mains distribution', count: 2 },
    ],
  },
  {
    name: 'Interview light',
    needs: [
      { item: 'Panel light', count: 3 },
      { item: 'Light stand', count: 3 },
      { item: 'Sandbag', count: 3 },
      { item: 'Large battery', count: 2 },
    ],
  },
];
