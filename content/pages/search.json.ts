import MiniSearch from 'minisearch';
import { indexOptions, type Place } from '../../components/Search/index-options.ts';
import { searchPlaces } from '../search-places.ts';

/** The index of the search, built once. */
export async function GET(): Promise<Response> {
  const index = new MiniSearch<Place>(indexOptions);
  index.addAll(await searchPlaces());
  return Response.json(index);
}
