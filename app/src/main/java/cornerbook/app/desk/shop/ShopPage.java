package cornerbook.app.desk.shop;

/**
 * What the shop asks for.
 *
 * @param secondCheck whether another person has to check the torque
 */
public record ShopPage(boolean secondCheck) {}
