// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.earth;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/**
 * The bodies as trees: of each group of bodies joined with each other the heaviest is the root, the others hang where the fewest
 * joins lead to it. Joins beside the tree are left over.
 */
final class EarthTree {
    final List<Integer> roots = new ArrayList<>();
    final int[] parent;
    final List<List<Integer>> children = new ArrayList<>();
    final List<EarthContent.Join> extra = new ArrayList<>();
    private final EarthContent content;

    EarthTree(EarthContent content) {
        this.content = content;
        int count = content.bodies().size();
        parent = new int[count];
        boolean[] seen = new boolean[count];
        List<Integer> byWeight = new ArrayList<>();
        for (int b = 0; b < count; b++) {
            parent[b] = -1;
            byWeight.add(b);
            children.add(new ArrayList<>());
        }
        byWeight.sort((a, b) -> Integer.compare(content.weight(b), content.weight(a)));
        for (int root : byWeight) {
            if (!seen[root]) {
                roots.add(root);
                spread(root, seen);
            }
        }
        for (EarthContent.Join join : content.joins()) {
            if (parent[join.a()] != join.b() && parent[join.b()] != join.a()) {
                extra.add(join);
            }
        }
    }

    private void spread(int root, boolean[] seen) {
        Deque<Integer> open = new ArrayDeque<>(List.of(root));
        seen[root] = true;
        while (!open.isEmpty()) {
            int body = open.remove();
            for (EarthContent.Join join : content.joins()) {
                if ((join.a() == body || join.b() == body) && !seen[join.other(body)]) {
                    seen[join.other(body)] = true;
                    parent[join.other(body)] = body;
                    children.get(body).add(join.other(body));
                    open.add(join.other(body));
                }
            }
        }
    }

    /** The joins by which a body hangs on its parent. */
    List<EarthContent.Join> toParent(int body) {
        return parent[body] < 0 ? List.of()
                : content.joins().stream().filter(join -> join.between(body, parent[body])).toList();
    }

    /** The joins beside the tree that end at a body. */
    List<EarthContent.Join> extraAt(int body) {
        return extra.stream().filter(join -> join.a() == body || join.b() == body).toList();
    }

    int rootOf(int body) {
        int at = body;
        while (parent[at] >= 0) {
            at = parent[at];
        }
        return at;
    }
}
