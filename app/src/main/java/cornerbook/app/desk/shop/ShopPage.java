package cornerbook.app.desk.shop;

/**
 * What the shop asks for.
 *
 * @param secondCheck whether another person has to check the torque
 * @param brakesFirst whether the brakes are looked at before the wheels come off
 */
public record ShopPage(boolean secondCheck, boolean brakesFirst) {}
