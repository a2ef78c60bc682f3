import { to } from '../../components/Page/to.ts';

/** What a phone needs to put the course on its home screen. */
export function GET(): Response {
  const icon = (size: number, purpose: string, name = `icon-${size}`) => ({
    src: to(`/${name}.png`),
    sizes: `${size}x${size}`,
    type: 'image/png',
    purpose,
  });
  return Response.json({
    name: 'Sixteenths',
    short_name: 'Sixteenths',
    lang: 'en-US',
    start_url: to('/'),
    display: 'minimal-ui',
    background_color: '#00573a',
    theme_color: '#00573a',
    icons: [icon(192, 'any'), icon(512, 'any'), icon(512, 'maskable', 'icon-512-round')],
  });
}
