import type { Channel } from '../curves/curves.ts';
import type { Kernel, Shape } from '../kernel/kernel.ts';
import type { Scope } from '../kernel/scope.ts';
import { closedPath, face, prism } from '../kernel/shapes.ts';

/** What a string channel takes out: its long section swept across its width. */
export function channelTool(kernel: Kernel, scope: Scope, channel: Channel): Shape {
  const [dx, dy] = channel.direction;
  const half = channel.width / 2;
  const side = face(kernel, scope, closedPath(channel.outline), ([s, z]) => [
    channel.at[0] + s * dx + half * dy,
    channel.at[1] + s * dy - half * dx,
    z,
  ]);
  return prism(kernel, scope, side, [-channel.width * dy, channel.width * dx, 0]);
}
