/**
 * Where a tank may stand: away from what pollutes, on ground that bears it, held down where ground water lifts it, with
 * its overflow led off; and the cautions that go with any roof, gutter and tank. Anything structural is for an
 * engineer: these checks say when to ask one, they do not replace one.
 */
package org.roofspring.drainage.siting;
