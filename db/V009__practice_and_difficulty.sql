-- The practice under which a drill is drawn, null: that of its class; and how hard its items are,
-- null: as they come.
ALTER TABLE assignment ADD COLUMN practice VARCHAR(20);

ALTER TABLE assignment ADD COLUMN difficulty VARCHAR(10);
