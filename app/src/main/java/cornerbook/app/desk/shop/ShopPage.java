package cornerbook.app.desk.shop;

import cornerbook.app.sheet.Letterhead;

/**
 * What the shop asks for.
 *
 * @param secondCheck whether another person has to check the torque
 * @param letterhead of its papers
 */
public record ShopPage(boolean secondCheck, Letterhead letterhead) {}
